package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.straddle.plan.problem.EveryPlan;
import org.straddle.plan.problem.PlanRules;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.bound.BoundedSearch;
import org.straddle.plan.bound.NativeSolvers;
import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.JoinedStays;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RandomProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.search.NeighbourhoodSearch;

/** Plans and bounds under bans, and with commitments, against every plan there is. */
class BannedPlanTest {

    private static final double EQUAL = 1e-6;

    @BeforeAll
    static void loadSolvers() {
        assertEquals(Optional.empty(), NativeSolvers.failure());
    }

    private static PlanProblem tiny(long seed) {
        return RandomProblem.withBansAndCommitments(
                seed % 3 == 0 ? RandomProblem.tinyWithFixed(seed) : RandomProblem.tiny(seed), seed);
    }

    @Test
    void plansAreTheBestThereIsAndNoneIsAboveTheBound() {
        int banned = 0;
        int kept = 0;
        for (long seed = 0; seed < 60; seed++) {
            PlanProblem problem = tiny(seed);
            List<Stay> all = EveryPlan.best(problem);
            if (all.isEmpty() && !problem.fixed().isEmpty()) {
                continue; // the fixed stops alone break a rule
            }
            double best = PlanRules.worth(problem, all);
            BoundedSearch.Found found = BoundedSearch.search(problem, PlanSettings.ofIterations(5000, seed),
                    PlanProgress.SILENT, new NullProgressMonitor());
            double worth = found.plan().roster().worth();
            assertTrue(worth <= best + EQUAL, "seed " + seed + ": " + worth + " cannot be above " + best);
            if (problem.fixed().isEmpty()) { // beside fixed stops plans are careful, see PlanProblem.arrival
                assertEquals(best, worth, EQUAL, "seed " + seed);
            }
            assertTrue(found.upperBound().orElse(Double.POSITIVE_INFINITY) >= best - EQUAL, "seed " + seed);
            PlanProblem free = new PlanProblem(problem.squaresOfSite(), problem.wants(),
                    problem.teamsAtOnce(), problem.days().stream().map(day -> new PlanDay(day.team(), day.from(),
                            day.until(), day.startPlace(), day.endPlace(), day.drivingLimit())).toList(),
                    problem.chances(), problem.fixed(), problem.roads(), problem.times(),
                    problem.drivingPricePerHour(), BannedTimes.NONE, problem.commitments());
            banned += PlanRules.worth(free, EveryPlan.best(free)) > best + EQUAL ? 1 : 0;
            kept += found.plan().roster().committed() > 0 ? 1 : 0;
        }
        assertTrue(banned > 10, "bans cost something only " + banned + " times of 60");
        assertTrue(kept > 10, "commitments were kept only " + kept + " times of 60");
    }

    @Test
    void everyWayToPlanKeepsTheBans() {
        for (long seed = 0; seed < 25; seed++) {
            PlanProblem problem = RandomProblem.withBansAndCommitments(RandomProblem.small(seed), seed);
            for (long steps : new long[] { 0, 60 }) {
                Roster roster = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(steps, seed),
                        PlanProgress.SILENT, new NullProgressMonitor()).roster();
                assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
                assertEquals(PlanRules.worth(problem, roster.stays()), roster.worth(), EQUAL, "seed " + seed);
                JoinedStays.join(roster);
                assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "joined, seed " + seed);
            }
            BoundedSearch.Found found = BoundedSearch.search(problem, PlanSettings.ofIterations(900, seed),
                    PlanProgress.SILENT, new NullProgressMonitor());
            assertEquals(List.of(), PlanRules.broken(problem, found.plan().roster().stays()), "seed " + seed);
            assertTrue(found.upperBound().orElse(Double.POSITIVE_INFINITY) >= found.plan().roster().worth() - EQUAL);
        }
    }

    @Test
    void drivesPauseAndGoOn() {
        PlanDay day = new PlanDay(0, 0, 1000, 0, 0, 1000,
                List.of(new PlanDay.Pause(500, 600), new PlanDay.Pause(100, 200)));
        assertEquals(90, day.arrival(10, 80));
        assertEquals(100, day.arrival(10, 90));
        assertEquals(201, day.arrival(10, 91));
        assertEquals(601, day.arrival(10, 391));
        assertEquals(150, day.arrival(150, 0), "who does not drive need not wait");
        assertEquals(250, day.arrival(150, 50));
        assertEquals(10, day.departure(201, 91));
        assertEquals(10, day.departure(601, 391));
        assertEquals(50, day.departure(150, 50));
        assertEquals(-10, day.departure(100, 110));
    }
}
