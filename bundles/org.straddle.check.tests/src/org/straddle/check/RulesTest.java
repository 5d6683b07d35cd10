package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;

/** Every rule finds what is wrong, at the least step over the edge, and is silent just before it. */
class RulesTest {

    private static final List<Rule> RULES = Checks.standard().rules();

    static List<RuleCase> cases() {
        return RuleCase.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void findsWhatIsWrongAndOnlyThat(RuleCase example) {
        List<Finding> wrong = findings(example.rule(), Sketch.outlook(example.day(), example.wrong()));
        assertFalse(wrong.isEmpty(), "must find: " + example.wrong());
        wrong.forEach(RulesTest::assertWellFormed);
        assertEquals(List.of(), sentences(findings(example.rule(), Sketch.outlook(example.day(), example.right()))),
                "must not find: " + example.right());
    }

    @Test
    void idsAreUniqueKebabCaseAndEachHasACase() {
        Set<String> ids = new HashSet<>();
        for (Rule rule : RULES) {
            assertTrue(ids.add(rule.id()), "twice: " + rule.id());
            assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule.id());
            assertFalse(rule.title().isBlank(), rule.id());
        }
        assertEquals(new TreeSet<>(ids),
                cases().stream().map(RuleCase::rule).collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void aGoodPlanHasNoFindings() {
        Event event = Sketch.of("""
                Auk -elementSets
                A: S1 07:00-09:00 [Tern 07:25-07:35] [Gull 07:40-07:50 @145.950]; L 12:00-14:00 [Skua 12:30-12:40]
                B: S2 08:00-10:00 [Skua 08:25-08:35] [Tern 08:40-08:50]; S1b 16:00-18:00 [Gull 16:30-16:40]
                """);
        event.getBirds().removeIf(bird -> bird.getName().equals("Auk"));
        assertEquals(List.of(), sentences(Checks.standard().run(Outlook.of(event, null), null)));
    }

    private static List<Finding> findings(String rule, Outlook outlook) {
        Rule found = RULES.stream().filter(r -> r.id().equals(rule)).findFirst().orElse(null);
        assertNotNull(found, "no rule " + rule);
        return new Checks(List.of(found)).run(outlook, null);
    }

    private static List<String> sentences(List<Finding> findings) {
        return findings.stream().map(f -> f.rule() + ": " + f.sentence()).toList();
    }

    private static void assertWellFormed(Finding finding) {
        assertTrue(finding.sentence().matches("(?s)[\\p{Lu}\\d“\"].*[.!?]"), finding.sentence());
        assertFalse(finding.sentence().contains("null"), finding.sentence());
        assertFalse(finding.objects().isEmpty(), finding.sentence());
        finding.objects().forEach(object -> assertNotNull(object.getId()));
        assertFalse(finding.sentence().toLowerCase().contains("safe"), finding.sentence());
    }
}
