package org.straddle.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Event;

/** Puts into an event what no form would let through, but a file can hold: each kind of object comes up as often. */
final class SpoiledEvent {

    private static final List<Object> NUMBERS = List.of(Double.NaN, Double.POSITIVE_INFINITY, -1.0, 0.0, 1e9, -1e9, 1e-9, 90.0, -180.0);
    private static final List<Object> COUNTS = List.of(-1, 0, 1, 7, Integer.MAX_VALUE, Integer.MIN_VALUE);
    private static final List<Object> TEXTS = Arrays.asList(null, "", " ", "?!\"<&>\\", "HP94", "Mars/Olympus", "x".repeat(500));
    private static final List<Object> INSTANTS = Arrays.asList(null, Instant.EPOCH, Instant.parse("1901-01-01T00:00:00Z"),
            Instant.parse("2027-06-19T12:00:00Z"), Instant.parse("9999-12-31T23:59:59Z"));
    private static final List<Object> DATES = Arrays.asList(null, LocalDate.of(1, 1, 1), LocalDate.of(2027, 6, 19), LocalDate.of(9999, 12, 31));

    private final Event event;
    private final Random random;
    private Runnable undo = () -> { };

    SpoiledEvent(Event event, long seed) {
        this.event = event;
        random = new Random(seed);
    }

    /** Spoils one thing; tells what, for the message of a test. */
    String spoil() {
        List<EObject> all = new ArrayList<>(List.of(event));
        event.eAllContents().forEachRemaining(all::add);
        Map<String, List<EObject>> byKind = all.stream().collect(Collectors.groupingBy(each -> each.eClass().getName(), TreeMap::new, Collectors.toList()));
        EObject thing = one(byKind.get(one(List.copyOf(byKind.keySet()))));
        EStructuralFeature feature = one(features(thing.eClass()));
        if (feature instanceof EReference reference) {
            relate(thing, reference, all);
        } else {
            fill(thing, (EAttribute) feature);
        }
        return thing.eClass().getName() + "." + feature.getName();
    }

    /** Takes the last value back. */
    void undo() {
        undo.run();
    }

    private static List<EStructuralFeature> features(EClass kind) {
        return kind.getEAllStructuralFeatures().stream().filter(feature -> feature.isChangeable() && !feature.isDerived()
                && !feature.getName().equals("id") && !(feature instanceof EReference reference && reference.isContainer())).toList();
    }

    @SuppressWarnings("unchecked")
    private void relate(EObject thing, EReference reference, List<EObject> all) {
        if (!reference.isMany()) {
            List<EObject> others = all.stream().filter(reference.getEReferenceType()::isInstance).toList();
            thing.eSet(reference, reference.isContainment() || others.isEmpty() || random.nextBoolean() ? null : one(others));
            return;
        }
        List<EObject> related = (List<EObject>) thing.eGet(reference);
        if (related.isEmpty()) {
            return;
        }
        if (reference.isContainment() && random.nextBoolean()) {
            related.add(EcoreUtil.copy(one(related)));
        } else {
            EcoreUtil.delete(one(related), true);
        }
    }

    @SuppressWarnings("unchecked")
    private void fill(EObject thing, EAttribute attribute) {
        Object before = attribute.isMany() ? List.copyOf((List<Object>) thing.eGet(attribute)) : thing.eGet(attribute);
        undo = () -> thing.eSet(attribute, before);
        if (attribute.isMany()) {
            List<Object> values = (List<Object>) thing.eGet(attribute);
            values.addAll(values(attribute).stream().filter(Objects::nonNull).limit(1).toList());
        } else if (values(attribute).isEmpty() || random.nextInt(4) == 0) {
            thing.eUnset(attribute);
        } else {
            thing.eSet(attribute, one(values(attribute)));
        }
    }

    private List<Object> values(EAttribute attribute) {
        if (attribute.getEAttributeType() instanceof EEnum choices) {
            return choices.getELiterals().stream().<Object>map(literal -> literal.getInstance()).toList();
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        return type == double.class ? NUMBERS : type == int.class ? COUNTS : type == boolean.class ? List.of(true, false)
                : type == String.class ? TEXTS : type == Instant.class ? INSTANTS : type == LocalDate.class ? DATES : List.of();
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }
}
