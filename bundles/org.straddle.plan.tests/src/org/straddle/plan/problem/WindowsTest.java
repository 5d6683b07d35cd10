package org.straddle.plan.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.bound.BoundedSearch;
import org.straddle.plan.bound.NativeSolvers;

/** Work with windows of time in all its parts, against every way to do it. */
class WindowsTest {

    private static final int HOUR = 3600;
    private static final double EQUAL = 1e-6;

    @BeforeAll
    static void loadSolvers() {
        assertEquals(Optional.empty(), NativeSolvers.failure());
    }

    /** Shared squares, turns that fail, pauses, a price of driving and a limit, set-up and take-down. */
    private static PlanProblem problem(long seed) {
        Random random = new Random(seed);
        int sites = 5;
        int days = 1 + random.nextInt(2);
        Wants wants = new Wants(IntStream.range(0, 4).mapToObj(square -> new double[] { random.nextInt(9), random.nextInt(9) })
                .toArray(double[][]::new), 2);
        boolean certain = random.nextBoolean();
        List<List<Integer>> squares = new ArrayList<>();
        List<Window> windows = new ArrayList<>();
        for (int site = 0; site < sites; site++) {
            squares.add(random.nextInt(3) == 0 ? List.of(random.nextInt(4)) : random.ints(2, 0, 4).distinct().boxed().toList());
            int opens = random.nextInt(5 * HOUR);
            windows.add(new Window(site, 0, opens, opens + random.nextInt(3 * HOUR), random.nextInt(HOUR),
                    certain ? Service.of(1, 1) : Service.of(random.nextInt(9) / 10.0, random.nextInt(9) / 10.0)));
        }
        double[] east = random.doubles(sites + 2, 0, HOUR).toArray();
        double[] north = random.doubles(sites + 2, 0, HOUR).toArray();
        IntBinaryOperator drives = (from, to) -> (int) Math.ceil(Math.hypot(east[from] - east[to], north[from] - north[to]));
        List<PlanDay> out = IntStream.range(0, days).mapToObj(team -> new PlanDay(team, 0, 7 * HOUR, sites + team, sites + team,
                random.nextBoolean() ? 3 * HOUR : 20 * HOUR, random.nextBoolean() ? List.of()
                        : List.of(new PlanDay.Pause(3 * HOUR, 3 * HOUR + 1200)))).toList();
        return new PlanProblem(squares, wants, List.of(2), out, List.of(), List.of(),
                new RoadTable(sites + 2, drives, drives),
                new StationTimes(random.nextInt(900), random.nextInt(900), 0), random.nextInt(3) / 2.0, BannedTimes.NONE,
                Commitments.NONE, windows);
    }

    /** Every order of every choice of sites on every day, each begun as early as it can be. */
    private static double best(PlanProblem problem, Roster roster, int day, int place, int free) {
        if (day == problem.days().size()) {
            return roster.worth();
        }
        PlanDay route = problem.days().get(day);
        double best = Double.NEGATIVE_INFINITY;
        boolean home = problem.arrival(day, place, free, route.endPlace()) <= route.until();
        if (home && roster.route(day).keepsDrivingLimit(problem)) {
            PlanDay next = day + 1 < problem.days().size() ? problem.days().get(day + 1) : null;
            best = best(problem, roster, day + 1, next == null ? 0 : next.startPlace(), next == null ? 0 : next.from());
        }
        for (Window window : problem.windows()) {
            int begin = Math.max(window.opens(), problem.times().ready(problem.arrival(day, place, free, window.site())));
            if (begin <= window.closes() && begin < route.until()
                    && roster.day(day).stream().noneMatch(stay -> stay.site() == window.site())) {
                Stay stay = window.stay(day, begin, problem.times());
                roster.add(stay);
                best = Math.max(best, best(problem, roster, day, window.site(), stay.departure()));
                roster.remove(stay);
            }
        }
        return best;
    }

    @Test
    void plansAreTheBestThereIsAndNoneIsAboveTheBound() {
        int worked = 0;
        int proven = 0;
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem problem = problem(seed);
            PlanDay first = problem.days().get(0);
            double best = best(problem, new Roster(problem), 0, first.startPlace(), first.from());
            BoundedSearch.Found found = BoundedSearch.search(problem, PlanSettings.ofIterations(6000, seed),
                    PlanProgress.SILENT, new NullProgressMonitor());
            Roster plan = found.plan().roster();
            assertEquals(best, plan.worth(), EQUAL, "seed " + seed);
            assertTrue(found.upperBound().getAsDouble() >= best - EQUAL, "seed " + seed);
            for (int day = 0; day < problem.days().size(); day++) {
                assertTrue(plan.canBeDriven(day), "seed " + seed);
            }
            for (Stay stay : plan.stays()) {
                Window window = problem.windows().get(stay.site());
                int begin = stay.turns().get(0).start();
                assertTrue(window.opens() <= begin && begin <= window.closes(), "seed " + seed);
                assertEquals(window.seconds(), stay.departure() - problem.times().takeDown() - begin, "seed " + seed);
                worked++;
            }
            proven += found.upperBound().getAsDouble() <= best + EQUAL ? 1 : 0;
        }
        assertTrue(worked > 60 && proven > 4, worked + " visits, " + proven + " proven: nothing was tried");
    }

    @Test
    void windowsStandByThemselves() {
        PlanProblem one = problem(1);
        assertThrows(IllegalArgumentException.class, () -> new PlanProblem(one.squaresOfSite(), one.wants(), List.of(2),
                one.days(), List.of(new Chance(0, 0, 0, 60, Service.of(1, 1))), List.of(), one.roads(), one.times(), 0,
                BannedTimes.NONE, Commitments.NONE, one.windows()));
        assertThrows(IllegalArgumentException.class, () -> new PlanProblem(one.squaresOfSite(), one.wants(), List.of(0),
                one.days(), List.of(), List.of(), one.roads(), one.times(), 0, BannedTimes.NONE, Commitments.NONE,
                one.windows()));
        List<Window> twice = List.of(one.windows().get(0), one.windows().get(0));
        assertThrows(IllegalArgumentException.class, () -> new PlanProblem(one.squaresOfSite(), one.wants(), List.of(2),
                one.days(), List.of(), List.of(), one.roads(), one.times(), 0, BannedTimes.NONE, Commitments.NONE, twice));
    }
}
