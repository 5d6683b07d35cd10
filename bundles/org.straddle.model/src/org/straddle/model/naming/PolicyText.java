package org.straddle.model.naming;

import java.util.List;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/**
 * What people read of a policy of the event, in the form, the guide and messages alike.
 *
 * @param label begins with a capital letter
 * @param unit  what the figure counts, or which values there are
 * @param help  one sentence: what it is, and what happens when it is larger
 * @param usual the value that the model begins with
 */
public record PolicyText(String label, String unit, String help, String usual) {

    private static final Catalogue TEXTS = Catalogue.of(PolicyText.class);

    /** @param policy a feature of the policies */
    public static PolicyText of(EStructuralFeature policy) {
        return Naming.inCurrent().policy(policy);
    }

    /** In the order of the model. */
    public static List<PolicyText> all() {
        return Literals.POLICIES.getEStructuralFeatures().stream().map(PolicyText::of).toList();
    }

    /** The label within a sentence: only a word that is all capitals keeps them. */
    String inSentence() {
        return label.length() > 1 && Character.isUpperCase(label.charAt(1)) ? label
                : Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }

    /** All of it but the label, for a page. */
    public String told() {
        return TEXTS.text("policyTold", "help", help, "usual", usual, "unit", unit);
    }
}
