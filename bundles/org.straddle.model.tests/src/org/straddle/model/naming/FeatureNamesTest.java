package org.straddle.model.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.straddle.model.StraddlePackage;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/** The Undo menu names what changed, so every feature of the model needs a name, and none more. */
class FeatureNamesTest {

    private static final Catalogue TEXTS = Catalogue.of(Naming.class);

    @Test
    void everyFeatureHasAName() {
        Set<String> nameless = new TreeSet<>();
        for (EClassifier type : StraddlePackage.eINSTANCE.getEClassifiers()) {
            if (type instanceof EClass kind) {
                for (EStructuralFeature feature : kind.getEStructuralFeatures()) {
                    if (!TEXTS.has((kind == Literals.POLICIES ? "policy." : "feature.") + feature.getName())) {
                        nameless.add(kind.getName() + "." + feature.getName());
                    }
                }
            }
        }
        assertEquals(Set.of(), nameless);
    }

    @Test
    void noNameIsOfAFeatureThatIsGone() {
        Set<String> known = new TreeSet<>();
        StraddlePackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(kind -> kind != Literals.POLICIES)
                .forEach(kind -> kind.getEStructuralFeatures().forEach(feature -> known.add("feature." + feature.getName())));
        List<String> gone = Collections.list(TEXTS.asResourceBundle().getKeys()).stream()
                .filter(key -> key.startsWith("feature.") && !known.contains(key)).sorted().toList();
        assertEquals(List.of(), gone);
    }
}
