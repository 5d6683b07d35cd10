package org.straddle.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * Which things of an event are still what they were in an earlier copy of it. Every thing has a version, an object that
 * says nothing but whether it is the same: two copies of a thing have the same one as long as nothing within it has
 * changed, what it contains included. A thing that it points at counts by its identity, not by what is in it.
 *
 * <p>Things are what the event contains directly, and the stops and bans of the plan. Versions are found by comparing
 * the two copies, however the event was edited in between.
 */
public final class Versions {

    private final Event event;
    private final Map<EObject, Object> byThing = new IdentityHashMap<>();
    private final Map<Object, EObject> byKey = new HashMap<>();
    private final Object head;
    private final Map<String, Identified> byId = new HashMap<>();
    private boolean unique = true;

    private Versions(Event event, Versions before) {
        this.event = event;
        byId.put(event.getId(), event);
        identifyWithin(event);
        things(event).forEach(this::index);
        head = before != null && sameHead(event, before.event) ? before.head : new Object();
        byKey.forEach((key, thing) -> {
            EObject earlier = before == null ? null : before.byKey.get(key);
            byThing.put(thing, earlier != null && same(thing, earlier) ? before.byThing.get(earlier) : new Object());
        });
    }

    /** @param event a copy that nobody edits */
    public static Versions of(Event event) {
        return new Versions(event, null);
    }

    /** Of a later copy of the same event. */
    public Versions next(Event later) {
        return new Versions(later, this);
    }

    /** Whether every thing can be told from every other; if not, nothing can be concluded from versions. */
    public boolean isUnique() {
        return unique;
    }

    /** The version of what the event says of itself: its name, zone and days, and its policies. */
    public Object ofHead() {
        return head;
    }

    /** The version of a thing; of something that is not in the event, such as a reference that leads nowhere, the thing. */
    public Object of(EObject thing) {
        return byThing.getOrDefault(thing, thing);
    }

    /** The one with this id, if it is in the event. */
    public Optional<Identified> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    private void identifyWithin(EObject object) {
        for (Features.Slot containment : Features.of(object.eClass()).contained()) {
            // An unset list would be made only to be asked.
            if (!containment.isSet(object)) {
                continue;
            }
            if (!containment.isMany()) {
                identify((EObject) containment.get(object, true));
            } else {
                for (Object inner : containment.all(object)) {
                    identify((EObject) inner);
                }
            }
        }
    }

    private void identify(EObject object) {
        if (object instanceof Identified thing) {
            unique &= thing.getId() != null && byId.put(thing.getId(), thing) == null;
        }
        if (object != null && Features.of(object.eClass()).contained().length > 0) {
            identifyWithin(object);
        }
    }

    private void index(EObject thing) {
        String id = thing instanceof Identified identified ? identified.getId() : String.valueOf(thing.eContainer()
                .eGet(thing.eContainingFeature()) instanceof List<?> all ? all.indexOf(thing) : 0);
        byKey.put(thing.eContainingFeature().getName() + " " + id, thing);
    }

    private static Stream<EObject> things(Event event) {
        List<EObject> things = new ArrayList<>();
        for (EObject child : event.eContents()) {
            if (child instanceof Plan plan) {
                things.addAll(plan.eContents());
            } else if (!(child instanceof Policies)) {
                things.add(child);
            }
        }
        return things.stream();
    }

    private static boolean sameHead(Event a, Event b) {
        return sameAttributes(Features.of(a.eClass()), a, b) && same(a.getPolicies(), b.getPolicies());
    }

    private static boolean same(EObject a, EObject b) {
        if (a == null || b == null || a.eClass() != b.eClass()) {
            return a == b;
        }
        Features features = Features.of(a.eClass());
        return sameAttributes(features, a, b) && sameReferences(features.contained(), a, b)
                && sameReferences(features.references(), a, b);
    }

    private static boolean sameReferences(Features.Slot[] references, EObject a, EObject b) {
        for (Features.Slot reference : references) {
            if (!sameReference(reference, a, b)) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameAttributes(Features features, EObject a, EObject b) {
        for (Features.Slot attribute : features.attributes()) {
            if (!Objects.equals(attribute.get(a, false), attribute.get(b, false))) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameReference(Features.Slot reference, EObject a, EObject b) {
        if (!reference.isSet(a) && !reference.isSet(b)) {
            return true;
        }
        Object one = reference.get(a, false);
        Object other = reference.get(b, false);
        if (!reference.isMany()) {
            return sameTarget(reference, (EObject) one, (EObject) other);
        }
        List<?> ones = (List<?>) one;
        List<?> others = (List<?>) other;
        if (ones.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < ones.size(); i++) {
            if (!sameTarget(reference, (EObject) ones.get(i), (EObject) others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameTarget(Features.Slot reference, EObject one, EObject other) {
        if (((EReference) reference.feature()).isContainment()) {
            return same(one, other);
        }
        return one == other || one instanceof Identified a && other instanceof Identified b
                && a.eIsProxy() == b.eIsProxy() && a.getId() != null && a.getId().equals(b.getId());
    }
}
