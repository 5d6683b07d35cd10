package org.straddle.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What makes up the state of a thing of the model, sorted out once for each class: after every edit thousands of things are
 * copied and compared.
 *
 * @param contained  what the thing contains
 * @param references what it points at; not what contains it
 * @param isTarget   whether anything may point at it
 */
record Features(EAttribute[] attributes, EReference[] contained, EReference[] references, boolean isTarget) {

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
        List<EAttribute> attributes = new ArrayList<>();
        List<EReference> contained = new ArrayList<>();
        List<EReference> references = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (feature.isChangeable() && !feature.isDerived()) {
                if (feature instanceof EAttribute attribute) {
                    attributes.add(attribute);
                } else if (feature instanceof EReference reference && reference.isContainment()) {
                    contained.add(reference);
                } else if (feature instanceof EReference reference && !reference.isContainer()) {
                    references.add(reference);
                }
            }
        }
        return new Features(attributes.toArray(EAttribute[]::new), contained.toArray(EReference[]::new),
                references.toArray(EReference[]::new), isTarget(type));
    }

    private static boolean isTarget(EClass type) {
        return StraddlePackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(any -> any.getEReferences().stream())
                .anyMatch(reference -> !reference.isContainment() && !reference.isContainer()
                        && reference.getEReferenceType().isSuperTypeOf(type));
    }
}
