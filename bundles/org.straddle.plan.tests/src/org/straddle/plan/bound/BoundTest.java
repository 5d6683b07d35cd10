package org.straddle.plan.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.problem.EveryPlan;
import org.straddle.plan.problem.PlanRules;
import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RandomProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.search.NeighbourhoodSearch;

/** The bound against every plan there is, and the search that goes by it. */
class BoundTest {

    private static final double EQUAL = 1e-6;

    /** Wherever these tests run there is a library for it; a test that skips itself would hide that it does not load. */
    @BeforeAll
    static void loadSolvers() {
        assertEquals(Optional.empty(), NativeSolvers.failure());
    }

    static ColumnGeneration columns(PlanProblem problem) {
        ChanceTable table = new ChanceTable(problem);
        return new ColumnGeneration(problem, table, new BirdMoments(problem, table), new OpenWants(problem),
                new GlopProgram());
    }

    private static BoundedSearch.Found search(PlanProblem problem, long iterations, long seed) {
        return BoundedSearch.search(problem, PlanSettings.ofIterations(iterations, seed), PlanProgress.SILENT,
                new NullProgressMonitor());
    }

    @Test
    void noPlanIsAboveTheBoundAfterAnyRound() {
        double looseness = 0;
        for (long seed = 0; seed < 100; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            double best = EveryPlan.bestOfTiny(seed);
            try (ColumnGeneration columns = columns(problem)) {
                for (int round = 0; !columns.isDone(); round++) {
                    assertTrue(round < 100, "seed " + seed + " does not come to an end");
                    columns.round();
                    assertTrue(columns.bound() >= best - EQUAL,
                            "seed " + seed + ", round " + round + ": " + columns.bound() + " is below " + best);
                }
                looseness += columns.bound() - best;
            }
        }
        assertTrue(looseness / 100 < 0.02, "bounds are " + looseness / 100 + " too high on average");
    }

    @Test
    void boundAndSearchKnowTheSameRelief() {
        double looseness = 0;
        int lower = 0;
        for (long seed = 0; seed < 60; seed++) {
            PlanProblem free = RandomProblem.tinyAtTwoSites(seed);
            PlanProblem problem = RandomProblem.withRelief(free, seed);
            double best = PlanRules.worth(problem, EveryPlan.best(problem));
            double bound = bound(problem);
            assertTrue(bound >= best - EQUAL, "seed " + seed + ": " + bound + " < " + best);
            looseness += bound - best;
            lower += bound < bound(free) - EQUAL ? 1 : 0;
        }
        assertTrue(looseness / 60 < 0.02, "bounds are " + looseness / 60 + " too high on average");
        assertTrue(lower > 7, "relief lowers only " + lower + " of 60 bounds: nothing was tried");
    }

    private static double bound(PlanProblem problem) {
        try (ColumnGeneration columns = columns(problem)) {
            while (!columns.isDone()) {
                columns.round();
            }
            return columns.bound();
        }
    }

    @Test
    void noPlanWithPinnedStopsIsAboveTheBound() {
        int pinned = 0;
        for (long seed = 0; seed < 60; seed++) {
            PlanProblem problem = RandomProblem.tinyWithFixed(seed);
            List<Stay> plan = EveryPlan.best(problem);
            double best = PlanRules.worth(problem, plan);
            try (ColumnGeneration columns = columns(problem)) {
                while (!columns.isDone()) {
                    columns.round();
                }
                assertTrue(columns.bound() >= best - EQUAL, "seed " + seed + ": " + columns.bound() + " < " + best);
            }
            pinned += plan.isEmpty() ? 0 : problem.fixed().size();
        }
        assertTrue(pinned > 10, "only " + pinned + " pinned stops in all: nothing was tried");
    }

    @Test
    void anyPricesGiveABound() {
        for (long seed = 0; seed < 50; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            double best = EveryPlan.bestOfTiny(seed);
            ChanceTable table = new ChanceTable(problem);
            BirdMoments moments = new BirdMoments(problem, table);
            OpenWants wants = new OpenWants(problem);
            try (RouteMaster master = new RouteMaster(problem, wants, table, moments, new GlopProgram())) {
                RoutePricing pricing = new RoutePricing(problem, table, moments);
                Prices prices = random(problem, moments, new Random(seed));
                pricing.setPrices(prices, List.of());
                double sum = 0;
                for (int day = 0; day < problem.days().size(); day++) {
                    sum += pricing.best(day).value();
                }
                assertTrue(master.bound(prices, sum) >= best - EQUAL, "seed " + seed);
            }
        }
    }

    private static Prices random(PlanProblem problem, BirdMoments moments, Random random) {
        PayCurve[][] pay = new PayCurve[problem.squareCount()][problem.groupCount()];
        for (PayCurve[] ofSquare : pay) {
            for (int g = 0; g < ofSquare.length; g++) {
                ofSquare[g] = new PayCurve(random.doubles(random.nextInt(4), 0, 2).mapToObj(at ->
                        new PayCurve.Priced(new Cut(at), random.nextDouble())).toList());
            }
        }
        return new Prices(pay, random.doubles(moments.all().size()).toArray(),
                random.doubles(problem.days().size(), 0, 1e-4).toArray(), new double[0]);
    }

    /** What several routes serve together is never above the constant and what each contributes, at any touching point. */
    @Test
    void cutsLieAboveWhatIsServed() {
        Random random = new Random(1);
        for (int trial = 0; trial < 20_000; trial++) {
            Cut cut = new Cut(random.nextInt(4) == 0 ? 0 : 3 * random.nextDouble());
            double sum = 0;
            double bound = cut.constant();
            for (int route = random.nextInt(5); route >= 0; route--) {
                double amount = random.nextInt(20) == 0 ? Double.POSITIVE_INFINITY : 2 * random.nextDouble();
                sum += amount;
                bound += cut.of(amount);
            }
            assertTrue(-Math.expm1(-sum) <= bound + 1e-12, cut + ": " + sum + " above " + bound);
        }
        assertEquals(1 - Math.exp(-0.7), new Cut(0.7).constant() + new Cut(0.7).of(0.7), 1e-12, "touches");
    }

    /** A curve of prices is what its cuts pay one by one. */
    @Test
    void payIsTheSumOfTheCuts() {
        PayCurve curve = new PayCurve(List.of(new PayCurve.Priced(new Cut(0.6), 2), new PayCurve.Priced(Cut.ALONE, 3)));
        for (double amount : new double[] { 0, 0.2, 0.6, 1.7 }) {
            assertEquals(2 * new Cut(0.6).of(amount) + 3 * Cut.ALONE.of(amount), curve.of(amount), 1e-12);
        }
        assertEquals(2 * new Cut(0.6).of(9e9) + 3, curve.most(), 1e-12);
    }

    @Test
    void plansAreTheBestThereIsAndKeepEveryRule() {
        int proven = 0;
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            double best = EveryPlan.bestOfTiny(seed);
            BoundedSearch.Found found = search(problem, 1000, seed);
            assertEquals(best, found.plan().roster().worth(), EQUAL, "seed " + seed);
            assertTrue(found.upperBound().getAsDouble() >= best - EQUAL, "seed " + seed);
            proven += found.plan().ending() == Proposal.Ending.PROVEN ? 1 : 0;
        }
        assertTrue(proven > 20, "only " + proven + " of 40 are proven");
    }

    @Test
    void plansKeepEveryRuleAndStayBelowTheirBound() {
        for (long seed = 0; seed < 50; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            BoundedSearch.Found found = search(problem, 1500, seed);
            Roster roster = found.plan().roster();
            assertEquals(List.of(), PlanRules.broken(problem, roster.stays()), "seed " + seed);
            assertEquals(PlanRules.worth(problem, roster.stays()), roster.worth(), EQUAL, "seed " + seed);
            assertTrue(found.upperBound().getAsDouble() >= roster.worth(), "seed " + seed);
        }
    }

    @Test
    void mixedPlansKeepEveryRule() {
        int better = 0;
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            ChanceTable table = new ChanceTable(problem);
            Roster greedy = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(0, seed),
                    PlanProgress.SILENT, new NullProgressMonitor()).roster();
            List<Route> plan = new ArrayList<>();
            for (int day = 0; day < problem.days().size(); day++) {
                plan.add(greedy.route(day));
            }
            List<Route> pool = new ArrayList<>(plan);
            try (ColumnGeneration columns = columns(problem)) {
                while (!columns.isDone()) {
                    columns.round();
                }
                pool.addAll(columns.best(100));
            }
            PlanMix mix = new PlanMix(problem, table, new BirdMoments(problem, table), new OpenWants(problem), pool);
            mix.startFrom(plan);
            Roster mixed = new Roster(problem);
            mix.best(1, seed).plan().orElseThrow().forEach(route -> mixed.restore(route.day(), route.stays()));
            List<String> broken = PlanRules.broken(problem, mixed.stays());
            assertEquals(List.of(), broken, "seed " + seed);
            assertTrue(mixed.worth() >= greedy.worth() - 1e-4, "seed " + seed);
            better += mixed.worth() > greedy.worth() + EQUAL ? 1 : 0;
        }
        assertTrue(better > 6, "a mix was better only " + better + " times of 40");
    }

    @Test
    void sameSeedGivesTheSamePlanAndBound() {
        PlanProblem problem = RandomProblem.of(7, 3, 2, 20, 6);
        BoundedSearch.Found one = search(problem, 4000, 4); // a mix is among them
        BoundedSearch.Found other = search(problem, 4000, 4);
        assertEquals(one.plan().roster().stays(), other.plan().roster().stays());
        assertEquals(one.upperBound(), other.upperBound());
    }

    @Test
    void runEndedByTheClockIsTheRunOfAsManySteps() {
        PlanProblem problem = RandomProblem.of(8, 3, 2, 20, 6);
        BoundedSearch.Found byClock = BoundedSearch.search(problem, new PlanSettings(Duration.ofMillis(900), 5),
                PlanProgress.SILENT, new NullProgressMonitor());
        BoundedSearch.Found byCount = search(problem, byClock.plan().iterations(), 5);
        assertEquals(byCount.plan().roster().stays(), byClock.plan().roster().stays());
    }

    @Test
    void boundsAreToldAsTheyFallAndCancelHandsOverTheBestSoFar() {
        PlanProblem problem = RandomProblem.of(9, 5, 3, 40, 10);
        NullProgressMonitor monitor = new NullProgressMonitor();
        List<Double> told = new ArrayList<>();
        PlanProgress cancelAtTheFourth = new PlanProgress() {
            @Override
            public void improved(double worth, long iterations, Duration elapsed) {
                // not what this is about
            }

            @Override
            public void bounded(double upperBound, double worth, Duration elapsed) {
                told.add(-upperBound);
                assertTrue(worth <= upperBound + EQUAL);
                monitor.setCanceled(told.size() == 4);
            }
        };
        BoundedSearch.Found found = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> BoundedSearch.search(problem,
                new PlanSettings(Duration.ofHours(10), 1), cancelAtTheFourth, monitor));
        assertEquals(Proposal.Ending.STOPPED, found.plan().ending());
        assertEquals(told.stream().sorted().toList(), told);
        assertEquals(-told.get(3), found.upperBound().getAsDouble(), EQUAL);
    }

    /** The real solver, which dies at a call. */
    private record Dying(LinearProgram solver, int[] callsLeft) implements LinearProgram {
        @Override
        public int addRow(double lower, double upper) {
            return solver.addRow(lower, upper);
        }

        @Override
        public int addColumn(double worth, double most) {
            return solver.addColumn(worth, most);
        }

        @Override
        public void set(int row, int column, double factor) {
            solver.set(row, column, factor);
        }

        @Override
        public void limit(int column, double most) {
            solver.limit(column, most);
        }

        @Override
        public Optimum solve() {
            if (--callsLeft[0] < 0) {
                throw new IllegalStateException("no optimum today");
            }
            return solver.solve();
        }

        @Override
        public void close() {
            solver.close();
        }
    }

    @Test
    void aBoundThatDiesIsToldOnceAndTheSearchGoesOnWithTheLastBound() {
        PlanProblem problem = RandomProblem.of(9, 5, 3, 40, 10);
        for (int calls : new int[] {0, 20}) {
            List<String> heard = new ArrayList<>();
            List<Double> bounds = new ArrayList<>();
            PlanProgress progress = new PlanProgress() {
                @Override
                public void improved(double worth, long iterations, Duration elapsed) {
                    // not what this is about
                }

                @Override
                public void bounded(double upperBound, double worth, Duration elapsed) {
                    bounds.add(upperBound);
                }

                @Override
                public void boundFailed(Throwable why) {
                    heard.add(why.getMessage());
                }
            };
            BoundedSearch.Found found = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> BoundedSearch.search(problem,
                    PlanSettings.ofIterations(2000, 1), progress, new NullProgressMonitor(),
                    new Dying(new GlopProgram(), new int[] {calls})));
            assertEquals(List.of("no optimum today"), heard);
            assertTrue(found.boundFailed());
            assertEquals(2000, found.plan().iterations(), "the search goes on");
            assertEquals(calls > 0, !bounds.isEmpty());
            assertEquals(bounds.isEmpty(), found.upperBound().isEmpty());
            assertTrue(found.upperBound().orElse(Double.MAX_VALUE) >= found.plan().roster().worth() - EQUAL);
        }
    }
}
