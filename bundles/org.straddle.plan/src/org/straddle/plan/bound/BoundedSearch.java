package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Route;
import org.straddle.plan.search.NeighbourhoodSearch;

/**
 * Searches for a plan and for a bound at once, each helping the other: {@link NeighbourhoodSearch} on the calling
 * thread, and on a second one {@link ColumnGeneration} in a {@link BranchTree}, which learns routes from the plans, and
 * {@link PlanMix}, which makes plans of the routes.
 *
 * <p>What the bound holds for: every plan that keeps the rules of the {@link PlanProblem}, to the second, with turns
 * that are its chances. Nothing is sampled or cut down for it; where {@link RoutePricing} and {@link RouteMaster} are
 * not exact they err to the high side.
 *
 * <p>Both threads meet after a number of steps that depends on the problem alone, and only then hear of each other.
 * So the plan follows from the problem, the seed and the number of steps, however fast either thread is; a plan
 * taken over counts as a step. What the second thread has not finished when the search ends is dropped.
 */
public final class BoundedSearch {

    /** Relative to the bound; what is closer cannot be told apart by the solver. */
    private static final double EQUAL = 1e-6;

    /** Steps that take about as long as one round of column generation, on events of any size on the bench. */
    private static final int STEPS = 40;

    /** The least where work has windows of time, and labels that are made in the time of one. */
    private static final int INSERTIONS = 20;
    private static final long LABELS_PER_STEP = 20;

    /** Rounds of column generation between two mixes; once all plans are parted it brings few routes that mixes need. */
    private static final int ROUNDS = 40;
    private static final int PARTED_ROUNDS = 160;

    /**
     * Effort of the first mix and of any, and steps beside one of effort 1: it takes some seconds, in which the search
     * makes some thousand steps on a large event of the bench.
     */
    private static final double FIRST_EFFORT = 0.5;
    private static final double MOST_EFFORT = 4;
    private static final int STEPS_PER_EFFORT = 4000;

    /** The same where work has windows of time. */
    private static final int INSERTIONS_PER_EFFORT = 10_000;

    /** Routes in a mix besides the present plan; more make it slow. */
    private static final int POOL = 120;

    /** Rounds at varied prices before a mix, once the bound is as good as it gets. */
    private static final int VARIATIONS = 3;

    private static final long POLL_MILLIS = 20;
    private static final long PATIENCE_SECONDS = 2;

    private final PlanProblem problem;
    private final PlanSettings settings;
    private final PlanProgress progress;
    private final NeighbourhoodSearch search;
    private final IProgressMonitor monitor;
    private final ChanceTable table;
    private final BirdMoments moments;
    private final OpenWants wants;
    private final ColumnGeneration columns;
    private final BranchTree tree;
    private final ExecutorService second = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "plan-bound");
        thread.setDaemon(true);
        return thread;
    });

    /** Of the second thread. */
    private final Random varying;

    private double bound = Double.POSITIVE_INFINITY;
    private boolean boundFailed;
    /** One day that is a single route: there is nothing to choose its parts from. */
    private final boolean nothingToMix;
    private double effort = FIRST_EFFORT;
    private volatile PlanMix running;
    private volatile boolean ended;

    private BoundedSearch(PlanProblem problem, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor,
            LinearProgram solver) {
        this.problem = problem;
        this.settings = settings;
        this.progress = progress;
        this.monitor = monitor;
        search = new NeighbourhoodSearch(problem, settings, progress, monitor);
        varying = new Random(settings.seed());
        table = new ChanceTable(problem);
        nothingToMix = problem.days().size() == 1 && !problem.windows().isEmpty();
        moments = new BirdMoments(problem, table);
        wants = new OpenWants(problem);
        columns = new ColumnGeneration(problem, table, moments, wants, solver);
        tree = new BranchTree(problem, columns);
    }

    /**
     * @param upperBound  empty when the search ended before there was one
     * @param boundFailed whether what works out the bound died on the way, so that the bound could be better
     */
    public record Found(NeighbourhoodSearch.Found plan, OptionalDouble upperBound, boolean boundFailed) {
    }

    /** Searches until the plan is proven best, the settings' limit or a cancel. Needs {@link NativeSolvers}. */
    public static Found search(PlanProblem problem, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor) {
        if (problem.leavesNothingToPlan().isPresent()) {
            NeighbourhoodSearch.Found fixed = NeighbourhoodSearch.search(problem, settings, progress, monitor);
            return new Found(fixed, OptionalDouble.of(fixed.roster().worth()), false);
        }
        return search(problem, settings, progress, monitor,
                new GlopProgram(problem.windows().isEmpty()));
    }

    /** The same by a solver of one's own; it is closed at the end. */
    static Found search(PlanProblem problem, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor,
            LinearProgram solver) {
        return new BoundedSearch(problem, settings, progress, monitor, solver).run();
    }

    private Found run() {
        try {
            search.begin();
            int round = 0;
            while (search.goesOn() && !isProven()) {
                round++;
                if (boundFailed || nothingToMix && tree.isDone()) {
                    search.step();
                } else if (!tree.isDone() && round % (tree.isParted() ? PARTED_ROUNDS : ROUNDS) != 0) {
                    improveBound();
                } else {
                    mix();
                }
            }
            NeighbourhoodSearch.Found plan = isProven() ? search.end(Proposal.Ending.PROVEN) : search.end();
            return new Found(plan, Double.isInfinite(bound) ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.max(bound, search.bestWorth())), boundFailed);
        } finally {
            endSecond();
        }
    }

    /** Waits a little, so that no native code still runs when the caller goes on to end the whole process. */
    private void endSecond() {
        ended = true;
        columns.stop();
        Optional.ofNullable(running).ifPresent(PlanMix::stop);
        second.execute(columns::close);
        second.shutdown();
        try {
            second.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean isProven() {
        return bound < Double.POSITIVE_INFINITY && bound - search.bestWorth() <= EQUAL * Math.abs(bound);
    }

    /** A task of the second thread; reads the present plan only. */
    private interface Task<T> {
        T work(List<Route> plan);
    }

    /** Steps of the search beside a task; what the task brings is heard of when both are through. */
    private <T> void together(int steps, Task<T> task, Consumer<T> result) {
        List<Route> plan = search.best();
        Future<T> future = second.submit(() -> task.work(plan));
        for (int step = 0; step < steps && search.goesOn(); step++) {
            search.step();
        }
        while (!future.isDone() && (search.goesOn() || search.stepsAreUsedUp() && !monitor.isCanceled())) {
            try {
                future.get(POLL_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                continue;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                monitor.setCanceled(true);
            } catch (ExecutionException e) {
                break;
            }
        }
        if (future.isDone()) {
            try {
                result.accept(future.get());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (ExecutionException e) {
                boundFailed = true;
                progress.boundFailed(e.getCause());
            }
        }
    }

    /** As many as take about as long; where work has windows, by the work of the last round. */
    private int stepsBesideRound() {
        return problem.windows().isEmpty() ? STEPS : (int) Math.max(INSERTIONS, columns.work() / LABELS_PER_STEP);
    }

    private void improveBound() {
        List<Route> kept = search.pool();
        double known = search.bestWorth();
        together(stepsBesideRound(), plan -> improvedBound(plan, known, kept), this::tellBound);
    }

    private double improvedBound(List<Route> plan, double known, List<Route> kept) {
        columns.offer(plan);
        columns.learn(kept);
        tree.round(known);
        return tree.bound();
    }

    private void tellBound(double improved) {
        if (improved < bound) {
            bound = improved;
            progress.bounded(bound, search.bestWorth(), search.elapsed());
        }
    }

    private void mix() {
        double now = effort;
        List<Route> kept = search.pool();
        together((int) (now * (problem.windows().isEmpty() ? STEPS_PER_EFFORT : INSERTIONS_PER_EFFORT)), plan -> mixed(plan, kept, now), mixed -> {
            if (search.goesOn()) {
                mixed.plan().ifPresent(search::take);
            }
            effort = mixed.settled() ? now : Math.min(MOST_EFFORT, 2 * now);
        });
    }

    private PlanMix.Mixed mixed(List<Route> plan, List<Route> kept, double now) {
        columns.offer(plan);
        for (int i = 0; i < VARIATIONS && tree.isDone(); i++) {
            columns.vary(varying);
        }
        List<Route> pool = new ArrayList<>(plan);
        pool.addAll(columns.best(POOL));
        pool.addAll(kept);
        PlanMix mix = new PlanMix(problem, table, moments, wants, pool);
        mix.startFrom(plan);
        running = mix;
        PlanMix.Mixed mixed = ended ? PlanMix.Mixed.NONE : mix.best(now, settings.seed());
        running = null;
        return mixed;
    }
}
