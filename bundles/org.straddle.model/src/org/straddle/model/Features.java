package org.straddle.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;

/**
 * What makes up the state of a thing of the model, sorted out once for each class: after every edit thousands of things are
 * copied and compared.
 *
 * @param contained  what the thing contains
 * @param references what it points at; not what contains it
 * @param isTarget   whether anything may point at it
 */
record Features(Slot[] attributes, Slot[] contained, Slot[] references, boolean isTarget) {

    /** A feature with its number in a class, by which its value is found without a search. */
    record Slot(EStructuralFeature feature, int number, boolean isMany) {

        boolean isSet(EObject thing) {
            return ((InternalEObject) thing).eIsSet(number);
        }

        /** @param resolve whether to load what a reference only names */
        Object get(EObject thing, boolean resolve) {
            return ((InternalEObject) thing).eGet(number, resolve, true);
        }

        /** The values of a feature that holds several. */
        List<?> all(EObject thing) {
            return (List<?>) get(thing, true);
        }

        void set(EObject thing, Object value) {
            ((InternalEObject) thing).eSet(number, value);
        }
    }

    private static final Map<EClass, Features> BY_CLASS = new ConcurrentHashMap<>();

    static Features of(EClass type) {
        Features known = BY_CLASS.get(type);
        if (known == null) {
            known = read(type);
            BY_CLASS.put(type, known);
        }
        return known;
    }

    private static Features read(EClass type) {
        List<Slot> attributes = new ArrayList<>();
        List<Slot> contained = new ArrayList<>();
        List<Slot> references = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature.isChangeable() && !feature.isDerived()) {
                Slot slot = new Slot(feature, type.getFeatureID(feature), feature.isMany());
                if (feature instanceof EAttribute) {
                    attributes.add(slot);
                } else if (feature instanceof EReference reference && reference.isContainment()) {
                    contained.add(slot);
                } else if (feature instanceof EReference reference && !reference.isContainer()) {
                    references.add(slot);
                }
            }
        }
        return new Features(attributes.toArray(Slot[]::new), contained.toArray(Slot[]::new),
                references.toArray(Slot[]::new), isTarget(type));
    }

    private static boolean isTarget(EClass type) {
        return StraddlePackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(any -> any.getEReferences().stream())
                .anyMatch(reference -> !reference.isContainment() && !reference.isContainer()
                        && reference.getEReferenceType().isSuperTypeOf(type));
    }
}
