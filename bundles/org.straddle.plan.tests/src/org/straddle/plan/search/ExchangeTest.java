package org.straddle.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.problem.EveryPlan;
import org.straddle.plan.problem.PlanRules;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RandomProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/** What it costs to work a square that a plan leaves out. */
class ExchangeTest {

    private static final double EQUAL = 1e-9;

    @Test
    void costsAreThoseOfAPlanThatKeepsTheRulesAndWorksTheSquare() {
        int found = 0;
        for (long seed = 0; seed < 120; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            if (seed % 2 == 0) {
                problem = RandomProblem.withBansAndCommitments(problem, seed);
            }
            Roster roster = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(40, seed), PlanProgress.SILENT,
                    new NullProgressMonitor()).roster();
            Exchange exchange = new Exchange(problem);
            for (int square = 0; square < problem.squareCount(); square++) {
                double worth = roster.worth();
                List<Stay> before = roster.stays();
                if (roster.worked(square) == 0) {
                    Exchange.Way way = exchange.best(roster, square).orElse(null);
                    assertEquals(before, roster.stays(), "the plan stays as it was");
                    if (way != null) {
                        Roster changed = new Roster(problem);
                        way.applyTo(changed);
                        assertTrue(changed.worked(square) > 0, "seed " + seed);
                        assertEquals(worth - way.cost(), changed.worth(), EQUAL, "seed " + seed);
                        assertEquals(List.of(), PlanRules.broken(problem, changed.stays()), "seed " + seed);
                        found++;
                    }
                }
            }
        }
        assertTrue(found > 20, "only " + found + " ways: nothing was tried");
    }

    /** In a tiny best plan no exchange brings anything. */
    @Test
    void aBestPlanIsNotBettered() {
        for (long seed = 0; seed < 20; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            Roster best = new Roster(problem);
            EveryPlan.best(problem).forEach(best::add);
            Exchange exchange = new Exchange(problem);
            for (int square = 0; square < problem.squareCount(); square++) {
                if (best.worked(square) == 0) {
                    exchange.best(best, square).ifPresent(way -> assertTrue(way.cost() >= -EQUAL));
                }
            }
        }
    }

    /** From the definition: the worth of the plan with and without. */
    @Test
    void gainsAreWhatTheWorthFallsBy() {
        for (long seed = 0; seed < 60; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            Roster roster = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(20, seed), PlanProgress.SILENT,
                    new NullProgressMonitor()).roster();
            for (Stay stay : List.copyOf(roster.stays())) {
                double worth = roster.worth();
                double gain = roster.gain(stay);
                double ofATurn = stay.turns().isEmpty() ? 0 : roster.gain(stay, stay.turns().get(0));
                roster.remove(stay);
                assertEquals(stay.day() == FixedStay.NO_DAY ? 0 : worth - roster.worth(),
                        stay.day() == FixedStay.NO_DAY ? 0 : gain, EQUAL, "seed " + seed);
                if (stay.turns().size() > 1) {
                    Stay shorter = new Stay(stay.day(), stay.site(), stay.arrival(), stay.departure(),
                            stay.turns().subList(1, stay.turns().size()), stay.fixed());
                    roster.add(shorter);
                    assertEquals(worth - roster.worth(), ofATurn, EQUAL, "seed " + seed);
                    roster.remove(shorter);
                }
                roster.add(stay);
            }
        }
    }
}
