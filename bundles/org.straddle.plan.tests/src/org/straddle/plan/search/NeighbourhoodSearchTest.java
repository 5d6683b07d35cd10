package org.straddle.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.plan.search.NeighbourhoodSearch.Found;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.problem.EveryPlan;
import org.straddle.plan.problem.PlanRules;
import org.straddle.plan.problem.JoinedStays;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RandomProblem;
import org.straddle.plan.problem.Roster;

class NeighbourhoodSearchTest {

    private static final double EQUAL = 1e-9;

    private static Found search(PlanProblem problem, long iterations, long seed) {
        return NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(iterations, seed), PlanProgress.SILENT,
                new NullProgressMonitor());
    }

    @Test
    void tinyPlansAreTheBestThereIs() {
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            double best = EveryPlan.bestOfTiny(seed);
            double found = search(problem, 1000, seed).roster().worth();
            assertTrue(found <= best + EQUAL, "seed " + seed + ": " + found + " cannot be above " + best);
            assertEquals(best, found, EQUAL, "seed " + seed);
        }
    }

    @Test
    void tinyPlansWithReliefAreTheBestThereIs() {
        int shorter = 0;
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem free = RandomProblem.tinyAtTwoSites(seed);
            PlanProblem problem = RandomProblem.withRelief(free, seed);
            double best = PlanRules.worth(problem, EveryPlan.best(problem));
            Roster roster = search(problem, 1000, seed).roster();
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            assertEquals(best, roster.worth(), EQUAL, "seed " + seed);
            shorter += PlanRules.worth(free, EveryPlan.best(free)) > best + EQUAL ? 1 : 0;
        }
        assertTrue(shorter > 3, "relief changes only " + shorter + " of 40 plans: nothing was tried");
    }

    @Test
    void noPlanOrJoinedStayIsLongerThanReliefAllows() {
        int bitten = 0;
        for (long seed = 0; seed < 100; seed++) {
            PlanProblem free = RandomProblem.small(seed);
            PlanProblem problem = RandomProblem.withRelief(RandomProblem.withBansAndCommitments(free, seed), seed);
            Roster roster = search(problem, 60, seed).roster();
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            JoinedStays.join(roster);
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            Roster unrelieved = search(free, 60, seed).roster();
            bitten += PlanRules.broken(problem, unrelieved.stays()).stream()
                    .anyMatch(rule -> rule.startsWith("needs relief")) ? 1 : 0;
        }
        assertTrue(bitten > 20, "relief would change only " + bitten + " of 100 plans: nothing was tried");
    }

    @Test
    void plansKeepEveryRuleAndAreWorthWhatTheySay() {
        for (long seed = 0; seed < 200; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            Roster roster = search(problem, 60, seed).roster();
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            assertEquals(PlanRules.worth(problem, roster.stays()), roster.worth(), EQUAL, "seed " + seed);
        }
    }

    @Test
    void joiningStaysKeepsEveryRuleAndTheWorth() {
        int joined = 0;
        for (long seed = 0; seed < 200; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            Roster roster = search(problem, 60, seed).roster();
            int stops = roster.stays().size();
            double worth = roster.worth();
            JoinedStays.join(roster);
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            assertEquals(worth, roster.worth(), EQUAL, "seed " + seed);
            joined += stops - roster.stays().size();
        }
        assertTrue(joined > 20, "only " + joined + " stays joined in 200 plans");
    }

    @Test
    void searchIsNeverWorseThanFillingTheDaysInOrder() {
        int better = 0;
        for (long seed = 0; seed < 100; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            double plain = search(problem, 0, seed).roster().worth();
            double searched = search(problem, 80, seed).roster().worth();
            assertTrue(searched >= plain, "seed " + seed);
            better += searched > plain + EQUAL ? 1 : 0;
        }
        assertTrue(better > 20, "searching helped only " + better + " times of 100");
    }

    @ParameterizedTest
    @ValueSource(longs = { 1, 2, 3 })
    void sameSeedGivesTheSamePlan(long seed) {
        PlanProblem problem = RandomProblem.of(7, 3, 2, 20, 6);
        assertEquals(search(problem, 150, seed).roster().stays(), search(problem, 150, seed).roster().stays());
    }

    @Test
    void runEndedByTheClockIsTheRunOfAsManyIterations() {
        PlanProblem problem = RandomProblem.of(8, 3, 2, 20, 6);
        Found byClock = NeighbourhoodSearch.search(problem, new PlanSettings(Duration.ofMillis(300), 5),
                PlanProgress.SILENT, new NullProgressMonitor());
        Found byCount = search(problem, byClock.iterations(), 5);
        assertEquals(byCount.roster().stays(), byClock.roster().stays());
        assertEquals(Proposal.Ending.LIMIT, byClock.ending());
    }

    @Test
    void cancelHandsOverTheBestSoFar() {
        PlanProblem problem = RandomProblem.of(9, 5, 3, 40, 10);
        NullProgressMonitor monitor = new NullProgressMonitor();
        List<Double> told = new ArrayList<>();
        PlanProgress cancelAtTheThird = (worth, iterations, elapsed) -> {
            told.add(worth);
            monitor.setCanceled(told.size() == 3);
        };
        Found found = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> NeighbourhoodSearch.search(problem,
                new PlanSettings(Duration.ofHours(10), 1), cancelAtTheThird, monitor));
        assertEquals(Proposal.Ending.STOPPED, found.ending());
        assertEquals(told.get(2), found.roster().worth(), EQUAL);
        assertEquals(told.stream().sorted().toList(), told, "every plan told of is better than the one before");
    }

    @Test
    void cancelledBeforeTheStartKeepsOnlyWhatIsFixed() {
        PlanProblem problem = RandomProblem.small(3);
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        Found found = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(100, 1), PlanProgress.SILENT, monitor);
        assertEquals(new Roster(problem).stays(), found.roster().stays());
        assertEquals(Proposal.Ending.STOPPED, found.ending());
    }

    @Test
    void withoutDaysThereIsNothingToPlan() {
        assertEquals(Proposal.Ending.NOBODY_OUT, search(RandomProblem.of(1, 0, 1, 3, 1), 10, 1).ending());
    }
}
