package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.straddle.model.naming.PolicyText;

/** What pages quote to press, open or fill in has that name in the program. */
class GuideLabelsTest {

    private final FixLabels fixes = new FixLabels();

    @Test
    void everyLabelIsOneOfTheProgram() {
        Set<String> shown = shown();
        List<String> unknown = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            Sources.quoted(toFix(page)).stream()
                    .filter(label -> !shown.contains(plain(label)) && !fixes.canMake(page.rule(), label))
                    .forEach(label -> unknown.add(page.rule() + ": " + label));
        }
        assertEquals(List.of(), unknown);
    }

    @Test
    void aPageQuotesAFixIfAndOnlyIfItsRuleOffersOne() {
        List<String> wrong = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            boolean quotes = Sources.quoted(toFix(page)).stream().anyMatch(label -> fixes.canMake(page.rule(), label));
            if (quotes != fixes.isFixed(page.rule())) {
                wrong.add(page.rule());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void wordsOfNoFixAreNoLabel() {
        assertTrue(fixes.canMake("turn-outside-stop", "Trim the turn to the stop"));
        assertTrue(fixes.canMake("same-frequency", "Agree on … MHz for …"));
        assertFalse(fixes.canMake("turn-outside-stop", "Trim the turn to the pass"));
        assertFalse(fixes.canMake("same-frequency", "Agree on … kHz for …"));
        assertFalse(fixes.canMake("stop-short", "Remove the turn of … on …"));
    }

    private static String toFix(GuidePage page) {
        return page.sections().get(Guide.HEADINGS.indexOf("How to fix it")).text();
    }

    /** Every text in the catalogues of the window, its menus included; architecture tests hold that each is used. */
    private static Set<String> shown() {
        Set<String> shown = new HashSet<>();
        PolicyText.all().forEach(policy -> shown.add(policy.label()));
        for (Path bundle : Sources.bundles("org.straddle.ui")) {
            Map<String, String> texts = Sources.texts(bundle);
            assertFalse(texts.isEmpty(), bundle + " has no catalogue");
            texts.values().forEach(text -> shown.add(plain(text)));
        }
        return shown;
    }

    /** Without mnemonic, ellipsis and key. */
    private static String plain(String label) {
        return label.replace("&amp;", "").replace("&", "").replaceFirst("(\\\\t|  \\().*$", "").replaceFirst("…$", "");
    }
}
