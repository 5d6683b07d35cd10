package org.straddle.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** A copy of an event in which everything is set once, and what tells two copies apart. */
class SnapshotTest {

    private final Event event = StraddleFactory.eINSTANCE.createEvent();
    private int made;

    SnapshotTest() {
        fill(event);
        things(event).forEach(this::point);
    }

    private static Stream<EObject> things(Event of) {
        List<EObject> all = new ArrayList<>(List.of(of));
        of.eAllContents().forEachRemaining(all::add);
        return all.stream();
    }

    /** Everything that can be set or contained, once. */
    @SuppressWarnings("unchecked")
    private void fill(EObject thing) {
        for (EAttribute attribute : thing.eClass().getEAllAttributes()) {
            if (attribute.isMany()) {
                ((List<Object>) thing.eGet(attribute)).add(value(attribute, null));
            } else {
                thing.eSet(attribute, value(attribute, thing.eGet(attribute)));
            }
        }
        for (EReference reference : thing.eClass().getEAllContainments()) {
            for (EClass kind : kinds(reference)) {
                EObject inner = StraddleFactory.eINSTANCE.create(kind);
                if (reference.isMany()) {
                    ((List<Object>) thing.eGet(reference)).add(inner);
                } else {
                    thing.eSet(reference, inner);
                }
                fill(inner);
            }
        }
    }

    private static List<EClass> kinds(EReference reference) {
        return StraddlePackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> !kind.isAbstract() && reference.getEReferenceType().isSuperTypeOf(kind)).toList();
    }

    /** Every reference leads somewhere. */
    @SuppressWarnings("unchecked")
    private void point(EObject thing) {
        for (EReference reference : thing.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer()) {
                EObject target = things(event).filter(reference.getEReferenceType()::isInstance).findFirst().orElseThrow();
                if (reference.isMany()) {
                    ((List<Object>) thing.eGet(reference)).add(target);
                } else {
                    thing.eSet(reference, target);
                }
            }
        }
    }

    /** Another value than before. */
    private Object value(EAttribute attribute, Object before) {
        made++;
        Class<?> kind = attribute.getEAttributeType().getInstanceClass();
        if (attribute.getEAttributeType() instanceof EEnum all) {
            return all.getELiterals().stream().map(literal -> (Object) literal.getInstance())
                    .filter(other -> other != (Enumerator) before).findFirst().orElseThrow();
        } else if (kind == String.class) {
            return "text " + made;
        } else if (kind == Instant.class) {
            return Instant.EPOCH.plusSeconds(made);
        } else if (kind == LocalDate.class) {
            return LocalDate.EPOCH.plusDays(made);
        } else if (kind == boolean.class) {
            return !Boolean.TRUE.equals(before);
        }
        return kind == int.class ? (Object) made : (Object) (double) made;
    }

    @Test
    void isWhatTheFrameworkWouldCopy() {
        Event copy = Snapshot.of(event);
        assertTrue(EcoreUtil.equals(EcoreUtil.copy(event), copy));
        List<EObject> all = things(event).toList();
        List<EObject> copies = things(copy).toList();
        assertEquals(all.size(), copies.size());
        for (int i = 0; i < all.size(); i++) {
            assertNotSame(all.get(i), copies.get(i));
            for (EReference reference : all.get(i).eClass().getEAllReferences()) {
                if (copies.get(i).eGet(reference) instanceof EObject target) {
                    assertTrue(copies.contains(target), reference.getName());
                }
            }
        }
    }

    @Test
    void keepsWhatLeadsNowhere() {
        Turn turn = event.getPlan().getStops().get(0).getTurns().get(0);
        Bird gone = StraddleFactory.eINSTANCE.createBird();
        ((InternalEObject) gone).eSetProxyURI(URI.createURI("birds/gone.bird#x"));
        turn.setBird(gone);
        Turn copied = Snapshot.of(event).getPlan().getStops().get(0).getTurns().get(0);
        assertTrue(((EObject) copied.eGet(StraddlePackage.Literals.TURN__BIRD, false)).eIsProxy());
    }

    /** Each value of each thing, changed by itself, changes the version of the part of the event that it is in, and no other. */
    @Test
    void everyValueCountsInOneVersion() {
        Event first = Snapshot.of(event);
        Versions before = Versions.of(first);
        assertTrue(before.isUnique());
        for (EObject thing : things(event).filter(any -> !(any instanceof Plan)).toList()) {
            for (EAttribute attribute : thing.eClass().getEAllAttributes()) {
                if (!attribute.isMany() && !attribute.getName().equals("id")) {
                    Object value = thing.eGet(attribute);
                    thing.eSet(attribute, value(attribute, value));
                    assertEquals(1, changed(first, before), thing.eClass().getName() + "." + attribute.getName());
                    thing.eSet(attribute, value);
                }
            }
        }
        assertEquals(0, changed(first, before));
    }

    /** How many parts have another version in a copy of the event as it is now. */
    private int changed(Event first, Versions before) {
        Event later = Snapshot.of(event);
        Versions after = before.next(later);
        List<EObject> parts = parts(first);
        List<EObject> partsLater = parts(later);
        int changed = before.ofHead() == after.ofHead() ? 0 : 1;
        for (int i = 0; i < parts.size(); i++) {
            changed += before.of(parts.get(i)) == after.of(partsLater.get(i)) ? 0 : 1;
        }
        return changed;
    }

    private static List<EObject> parts(Event of) {
        return Stream.concat(of.eContents().stream().filter(part -> !(part instanceof Policies) && !(part instanceof Plan)),
                of.getPlan().eContents().stream()).toList();
    }
}
