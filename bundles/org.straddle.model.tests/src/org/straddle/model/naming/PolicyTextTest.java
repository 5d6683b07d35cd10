package org.straddle.model.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/** Every policy has a name of its own, a unit and a sentence of help, and the catalogue has no others. */
class PolicyTextTest {

    private static final Catalogue TEXTS = Catalogue.of(PolicyText.class);
    private static final int LONGEST_HELP = 30;

    @Test
    void everyPolicyHasAllThreeAndNoneIsOfAPolicyThatIsGone() {
        Set<String> wanted = new TreeSet<>();
        for (EStructuralFeature policy : Literals.POLICIES.getEStructuralFeatures()) {
            List.of("policy.", "policyUnit.", "policyHelp.").forEach(kind -> wanted.add(kind + policy.getName()));
        }
        Set<String> there = new TreeSet<>(Collections.list(TEXTS.asResourceBundle().getKeys()).stream()
                .filter(key -> key.matches("policy(Unit|Help)?\\..*")).toList());
        assertEquals(wanted, there);
    }

    @Test
    void helpIsOneSentenceAndNamesAreDistinct() {
        Set<String> labels = new HashSet<>();
        for (PolicyText policy : PolicyText.all()) {
            assertTrue(labels.add(policy.label()), policy.label());
            assertTrue(Character.isUpperCase(policy.label().charAt(0)), policy.label());
            assertTrue(policy.help().matches("[A-Z][^.!?]*(\\d\\.\\d[^.!?]*)*\\."), policy.help());
            assertTrue(policy.help().split(" ").length <= LONGEST_HELP, policy.help());
            assertTrue(!policy.unit().isBlank(), policy.label());
        }
    }

    @Test
    void aPolicyIsCalledTheSameInASentence() {
        assertEquals("gap between turns", Naming.feature(Literals.POLICIES__TURN_GAP_MINUTES));
        assertEquals("FM contacts", Naming.feature(Literals.POLICIES__FM_CONTACTS_PER_MINUTE));
        assertEquals("The average speed on roads between places whose drive nobody timed; a higher speed makes drives shorter, and a plan"
                + " that is too fast slips. Usual: 60 (km/h).", PolicyText.of(Literals.POLICIES__ROAD_SPEED_KMH).told());
        assertEquals("no", PolicyText.of(Literals.POLICIES__LONE_OPERATOR_ALLOWED).usual());
        assertEquals("ready ones first", PolicyText.of(Literals.POLICIES__SITES_TAKEN).usual());
    }
}
