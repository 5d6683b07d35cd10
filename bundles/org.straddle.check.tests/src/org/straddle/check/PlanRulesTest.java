package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.straddle.check.run.Checks;
import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.PlanRule;

/** The list of what a plan may not do is the list of the rules that block a plan. */
class PlanRulesTest {

    /** These say that a day, stop or turn lacks something: what has no team or no times is at no place that could be wrong. */
    private static final List<String> INCOMPLETE =
            List.of("stop-incomplete", "stop-times-wrong", "turn-incomplete", "turn-times-wrong", "day-times-wrong");

    private static final Map<String, Rule> STANDARD = Checks.standard().rules().stream()
            .collect(Collectors.toMap(Rule::id, Function.identity()));

    @Test
    void everyEntryIsARuleThatBlocks() {
        assertEquals(List.of(), Stream.of(PlanRule.values()).map(PlanRule::id)
                .filter(id -> !STANDARD.containsKey(id) || STANDARD.get(id).severity() != Severity.BLOCKER).toList());
    }

    @Test
    void everyRuleAboutThePlanAndItsPeopleThatBlocksHasItsEntry() {
        SortedSet<String> missing = new TreeSet<>();
        STANDARD.values().stream().filter(rule -> rule.getClass().getPackageName().matches(".*\\.rules\\.(plan|people)"))
                .filter(rule -> rule.severity() == Severity.BLOCKER).forEach(rule -> missing.add(rule.id()));
        missing.removeAll(INCOMPLETE);
        Stream.of(PlanRule.values()).map(PlanRule::id).forEach(missing::remove);
        assertEquals(new TreeSet<>(), missing);
    }

    @Test
    void whatAPlanShouldNotDoIsARuleThatDoesNotBlock() {
        assertEquals(List.of(), Stream.of(CareRule.values()).map(CareRule::id)
                .filter(id -> !STANDARD.containsKey(id) || STANDARD.get(id).severity() == Severity.BLOCKER).toList());
    }
}
