package org.straddle.plan.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.EveryPlan;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RandomProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;
import org.straddle.plan.search.NeighbourhoodSearch;

/** Parts of all plans, and what their bounds add up to. */
class BranchTreeTest {

    private static final double EQUAL = 1e-6;

    @BeforeAll
    static void loadSolvers() {
        assertEquals(Optional.empty(), NativeSolvers.failure());
    }

    private static Decision decision(PlanProblem problem, Random random) {
        Set<Integer> sites = new HashSet<>(Set.of(random.nextInt(problem.siteCount())));
        if (random.nextInt(3) == 0) {
            sites.add(random.nextInt(problem.siteCount()));
        }
        return new Decision(random.nextInt(problem.days().size()), sites, random.nextBoolean());
    }

    private static boolean keeps(List<Stay> plan, Decision decision) {
        return decision.visits() == plan.stream()
                .anyMatch(stay -> stay.day() == decision.day() && decision.sites().contains(stay.site()));
    }

    /** Every route is on one side of a decision about its day and not on the other, and on both sides of one about another. */
    @Test
    void theTwoSidesOfADecisionTakeEachRouteOnce() {
        Random random = new Random(3);
        int visiting = 0;
        for (long seed = 0; seed < 40; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            Roster roster = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(0, seed), PlanProgress.SILENT,
                    new NullProgressMonitor()).roster();
            for (int trial = 0; trial < 20; trial++) {
                Decision decision = decision(problem, random);
                for (int day = 0; day < problem.days().size(); day++) {
                    Route route = roster.route(day);
                    boolean one = decision.allows(route);
                    boolean other = decision.opposite().allows(route);
                    if (day == decision.day()) {
                        assertNotEquals(one, other);
                        visiting += one == decision.visits() ? 1 : 0;
                    } else {
                        assertTrue(one && other);
                    }
                }
            }
        }
        assertTrue(visiting > 100, "only " + visiting + " routes visited what was asked");
    }

    /** Whatever was decided about several days, by trying all plans that keep to it. */
    @Test
    void noPlanOfANodeIsAboveItsBoundAfterAnyRound() {
        int empty = 0;
        int visits = 0;
        double looseness = 0;
        int tried = 0;
        for (long seed = 0; seed < 120; seed++) {
            PlanProblem problem = seed % 3 == 0 ? RandomProblem.withRelief(RandomProblem.tinyAtTwoSites(seed), seed)
                    : RandomProblem.tiny(seed);
            EveryPlan every = EveryPlan.of(problem);
            Random random = new Random(seed);
            try (ColumnGeneration columns = BoundTest.columns(problem)) {
                for (int trial = 0; trial < 4; trial++) {
                    Node node = columns.root();
                    List<Decision> decisions = new ArrayList<>();
                    for (int more = random.nextInt(3); more >= 0; more--) {
                        decisions.add(decision(problem, random));
                        node = node.with(decisions.get(decisions.size() - 1));
                    }
                    double best = every.bestWorth(plan -> decisions.stream().allMatch(one -> keeps(plan, one)));
                    for (int round = 0; !node.isDone() && node.bound() > Double.NEGATIVE_INFINITY; round++) {
                        assertTrue(round < 100, "seed " + seed + " does not come to an end");
                        columns.round(node);
                        assertTrue(node.bound() >= best - EQUAL, "seed " + seed + ", " + decisions + ": " + node.bound()
                                + " is below " + best);
                    }
                    if (Double.isInfinite(best)) {
                        empty++;
                    } else {
                        looseness += node.bound() - best;
                        tried++;
                    }
                    visits += decisions.stream().anyMatch(Decision::visits) ? 1 : 0;
                }
            }
        }
        assertTrue(visits > 100 && empty > 10 && tried > 200, visits + ", " + empty + ", " + tried + ": too little was tried");
        assertTrue(looseness / tried < 0.02, "bounds are " + looseness / tried + " too high on average");
    }

    /** What pricing finds in a node is of the node. */
    @Test
    void routesFoundKeepToWhatWasDecided() {
        int found = 0;
        for (long seed = 0; seed < 60; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            Random random = new Random(seed);
            ChanceTable table = new ChanceTable(problem);
            RoutePricing pricing = new RoutePricing(problem, table, new BirdMoments(problem, table));
            try (ColumnGeneration columns = BoundTest.columns(problem)) {
                columns.round();
                for (int trial = 0; trial < 5; trial++) {
                    Decision decision = decision(problem, random);
                    pricing.restrictTo(List.of(decision));
                    pricing.setPrices(columns.root().best(), List.of());
                    Pricing.Best best = pricing.best(decision.day());
                    if (!Double.isInfinite(best.value())) {
                        assertTrue(decision.allows(best.route()), "seed " + seed + ": " + decision + " " + best.route());
                        found += best.route().stays().isEmpty() ? 0 : 1;
                    }
                }
            }
        }
        assertTrue(found > 60, "only " + found + " routes were found");
    }

    @Test
    void noPlanIsAboveTheBoundOfATreeAndTheTreeEnds() {
        int parted = 0;
        for (long seed = 0; seed < 100; seed++) {
            PlanProblem problem = RandomProblem.tiny(seed);
            double best = EveryPlan.bestOfTiny(seed);
            try (ColumnGeneration columns = BoundTest.columns(problem)) {
                BranchTree tree = new BranchTree(problem, columns);
                double before = Double.POSITIVE_INFINITY;
                for (int round = 0; !tree.isDone(); round++) {
                    assertTrue(round < 500, "seed " + seed + " does not come to an end");
                    tree.round(best - 1); // a plan that is not the best one
                    assertTrue(tree.bound() >= best - EQUAL, "seed " + seed + ": " + tree.bound() + " is below " + best);
                    assertTrue(tree.bound() <= before + EQUAL, "seed " + seed + ": it rises");
                    before = tree.bound();
                }
                parted += tree.bound() < columns.bound() - EQUAL ? 1 : 0;
            }
        }
        assertTrue(parted > 0, "no tree was of use");
    }

    /** Teams in each other's way: a mix of routes by halves is worth more than any plan. */
    @Test
    void aTreeLowersABoundThatColumnGenerationLeaves() {
        int lower = 0;
        for (long seed = 0; seed < 12; seed++) {
            PlanProblem problem = RandomProblem.small(seed);
            double known = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(200, seed), PlanProgress.SILENT,
                    new NullProgressMonitor()).roster().worth();
            double root;
            try (ColumnGeneration columns = BoundTest.columns(problem)) {
                while (!columns.isDone()) {
                    columns.round();
                }
                root = columns.bound();
            }
            try (ColumnGeneration columns = BoundTest.columns(problem)) {
                BranchTree tree = new BranchTree(problem, columns);
                for (int round = 0; round < 300 && !tree.isDone(); round++) {
                    tree.round(known);
                }
                double bound = Math.max(known, tree.bound());
                assertTrue(bound <= root + EQUAL * root || !tree.isDone(), "seed " + seed + ": " + bound + " above " + root);
                lower += bound < root - 1e-3 * root ? 1 : 0;
            }
        }
        assertTrue(lower > 0, "no bound is lower");
    }

    /** In between two prices everything is paid and costs in between. */
    @Test
    void curvesBetweenPayBetween() {
        PayCurve one = new PayCurve(List.of(new PayCurve.Priced(new Cut(0.6), 2), new PayCurve.Priced(Cut.ALONE, 3)));
        PayCurve other = new PayCurve(List.of(new PayCurve.Priced(new Cut(0.6), 1), new PayCurve.Priced(new Cut(1.2), 4)));
        for (double amount : new double[] { 0, 0.2, 0.6, 1.7 }) {
            assertEquals(0.75 * one.of(amount) + 0.25 * other.of(amount), one.toward(other, 0.25).of(amount), 1e-12);
        }
    }
}
