package org.straddle.plan.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.problem.FixedStay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;

/**
 * Large-neighbourhood search: fill the days one after the other, then again and again take a part of the
 * plan out and fill it anew, keeping what is better and, within a temperature that falls and rises, what is
 * a little worse.
 *
 * <p>Why this way: filling one team's gap in the best way is quick and nearly exact ({@link Refill}), so
 * what is left to search is how the teams share squares and birds. It gives a plan at once and a better one
 * the longer it runs. It is weak where several teams contend for the same few passes, and it has no idea how
 * far from the best it is.
 *
 * <p>The clock decides only when to stop: everything else follows from the problem, the seed and the number
 * of the iteration.
 */
public final class NeighbourhoodSearch {

    /** Iterations from hot to cold, in the first cycle; and how much longer each cycle is than the one before. */
    private static final int FIRST_CYCLE = 400;
    private static final double GROWTH = 1.25;

    /** After so many cycles, one in so many begins anew. */
    private static final int MANY = 8;
    private static final int ANEW = 3;

    /** Temperatures, as shares of what a turn of the first plan is worth on average. */
    private static final double HOT = 0.4;
    private static final double COLD = 0.008;
    private static final int TICKS = 1000;

    private final PlanProblem problem;
    private final PlanSettings settings;
    private final PlanProgress progress;
    private final IProgressMonitor monitor;

    private final long startNanos = System.nanoTime();
    private final Random random;
    private final DayFill dayFill;
    private final Taste plain;
    private final AdaptiveChoice choice = new AdaptiveChoice(Removal.values().length);
    private final RoutePool pool = new RoutePool();
    private final Roster roster;
    private double worth;
    private double unit;
    private List<List<Stay>> best;
    private double bestWorth;
    private long iteration;
    private long cycleStart;
    private long cycleEnd;
    private long nextCycle = FIRST_CYCLE;
    private int cycles;
    private SubMonitor ticks;
    private int ticked;

    /** A search to be led step by step: {@link #begin}, then {@link #step} as often as wanted. */
    public NeighbourhoodSearch(PlanProblem problem, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor) {
        this.problem = problem;
        this.settings = settings;
        this.progress = progress;
        this.monitor = monitor;
        random = new Random(settings.seed());
        dayFill = new DayFill(problem);
        plain = Taste.plain(problem);
        roster = new Roster(problem);
    }

    /** What a search found: the fixed stays and the chosen ones. */
    public record Found(Roster roster, long iterations, Duration elapsed, Proposal.Ending ending) {
    }

    /** Searches until the settings' limit or a cancel; either way with the best plan so far. */
    public static Found search(PlanProblem problem, PlanSettings settings, PlanProgress progress,
            IProgressMonitor monitor) {
        NeighbourhoodSearch search = new NeighbourhoodSearch(problem, settings, progress, monitor);
        Optional<Proposal.Ending> nothing = problem.leavesNothingToPlan();
        if (nothing.isPresent()) {
            return search.found(nothing.get());
        }
        search.begin();
        while (search.goesOn()) {
            search.step();
        }
        return search.end();
    }

    public void begin() {
        ticks = SubMonitor.convert(monitor, TICKS);
        fillDaysInOrder();
        keepAsBest();
        unit = Math.max(0, worth) / Math.max(1, roster.stays().stream().mapToInt(Stay::turnCount).sum());
        if (!problem.commitments().isEmpty()) {
            fillAroundCommitments();
        }
    }

    /** The earlier plan as far as it can be kept, with the gaps filled: the search is never worse than that either. */
    private void fillAroundCommitments() {
        for (Stay stay : roster.stays()) {
            roster.clear(stay);
        }
        CommittedStays.putBack(roster);
        fillDaysInOrder();
        if (worth > bestWorth) {
            keepAsBest();
        } else {
            restoreBest();
        }
    }

    /** Whether neither limit is reached and nobody cancelled. */
    public boolean goesOn() {
        return !monitor.isCanceled() && !limitReached();
    }

    public void step() {
        iterate();
        count();
    }

    /** Hears of a plan found elsewhere; that counts as a step. */
    public void take(List<Route> plan) {
        List<List<Stay>> before = new ArrayList<>();
        for (int day = 0; day < problem.days().size(); day++) {
            before.add(List.copyOf(roster.day(day)));
            roster.restore(day, List.of());
        }
        plan.forEach(route -> roster.restore(route.day(), route.stays()));
        double offered = roster.worth();
        if (offered > bestWorth && plan.stream().allMatch(route -> route.canBeDriven(problem))) {
            worth = offered;
            keepAsBest();
        } else {
            for (int day = 0; day < before.size(); day++) {
                roster.restore(day, before.get(day));
            }
        }
        count();
    }

    private void count() {
        iteration++;
        int reached = (int) (TICKS * doneShare());
        ticks.worked(reached - ticked);
        ticked = reached;
    }

    public double bestWorth() {
        return bestWorth;
    }

    /** Routes of good plans: the last ones that were the best in their time, or the end of a cycle. */
    public List<Route> pool() {
        return pool.routes();
    }

    private List<Route> present() {
        return IntStream.range(0, problem.days().size()).mapToObj(roster::route).toList();
    }

    /** The best plan so far, by day. */
    public List<Route> best() {
        List<Route> routes = new ArrayList<>();
        for (int day = 0; day < best.size(); day++) {
            routes.add(new Route(day, best.get(day)));
        }
        return routes;
    }

    /** Ends at a limit or by a cancel. */
    public Found end() {
        return end(limitReached() ? Proposal.Ending.LIMIT : Proposal.Ending.STOPPED);
    }

    public Found end(Proposal.Ending ending) {
        restoreBest();
        return found(ending);
    }

    private Found found(Proposal.Ending ending) {
        return new Found(roster, iteration, elapsed(), ending);
    }

    /** The plain greedy plan: the search is never worse. */
    private void fillDaysInOrder() {
        for (int day = 0; day < problem.days().size() && !monitor.isCanceled(); day++) {
            dayFill.fill(roster, day, plain);
        }
        worth = roster.worth();
    }

    private void iterate() {
        if (iteration >= cycleEnd) {
            beginCycle();
        }
        int chosen = choice.pick(random);
        List<Stay> removed = Removal.values()[chosen].choose(roster, random);
        List<Integer> days = daysOf(removed);
        List<List<Stay>> old = days.stream().map(day -> List.copyOf(roster.day(day))).toList();
        removed.forEach(roster::clear);
        List<Integer> order = new ArrayList<>(days);
        Collections.shuffle(order, random);
        order.forEach(day -> dayFill.fill(roster, day, Taste.random(problem, plain, random)));
        double changed = roster.worth();
        if (days.stream().allMatch(roster::canBeDriven) && accept(changed)) {
            choice.reward(chosen, changed > bestWorth ? AdaptiveChoice.BEST
                    : changed > worth ? AdaptiveChoice.BETTER : AdaptiveChoice.ACCEPTED);
            worth = changed;
            if (worth > bestWorth) {
                keepAsBest();
            }
        } else {
            choice.reward(chosen, 0);
            for (int i = 0; i < old.size(); i++) {
                roster.restore(days.get(i), old.get(i));
            }
        }
    }

    /** Hot again, from the best plan, from where the last cycle ended, or now and then from nothing. */
    private void beginCycle() {
        pool.add(present());
        cycleStart = iteration;
        cycleEnd = iteration + nextCycle;
        nextCycle = (long) (nextCycle * GROWTH);
        cycles++;
        if (cycles > MANY && cycles % ANEW == 0) {
            startAnew();
        } else if (random.nextBoolean()) {
            restoreBest();
        }
    }

    /** Where a search has gone in circles for long, a plan made of nothing may lead elsewhere. */
    private void startAnew() {
        roster.stays().forEach(roster::clear);
        for (int day = 0; day < problem.days().size(); day++) {
            dayFill.fill(roster, day, Taste.random(problem, plain, random));
        }
        worth = roster.worth();
        if (!IntStream.range(0, problem.days().size()).allMatch(roster::canBeDriven)) {
            restoreBest();
        }
    }

    /** Days that lose a stay, and now and then another, which may use what becomes free. */
    private List<Integer> daysOf(List<Stay> removed) {
        Set<Integer> days = new LinkedHashSet<>();
        removed.stream().map(Stay::day).filter(day -> day != FixedStay.NO_DAY).forEach(days::add);
        if (days.isEmpty() || random.nextInt(4) == 0) {
            days.add(random.nextInt(problem.days().size()));
        }
        return List.copyOf(days);
    }

    private boolean accept(double changed) {
        double phase = (double) (iteration - cycleStart) / (cycleEnd - cycleStart);
        double temperature = unit * HOT * Math.pow(COLD / HOT, phase);
        return changed >= worth + temperature * Math.log(1 - random.nextDouble());
    }

    /** Whether the limit of iterations is reached. */
    public boolean stepsAreUsedUp() {
        return settings.iterations().isPresent() && iteration >= settings.iterations().getAsLong();
    }

    private void keepAsBest() {
        dropIdleStays();
        best = new ArrayList<>();
        for (int day = 0; day < problem.days().size(); day++) {
            best.add(List.copyOf(roster.day(day)));
        }
        bestWorth = worth;
        pool.add(best());
        progress.improved(bestWorth, iteration, elapsed());
    }

    /** A stay may have become worthless through others that work the same squares. */
    private void dropIdleStays() {
        for (Stay stay : roster.stays()) {
            if (stay.fixed().isEmpty()) {
                roster.remove(stay);
                double without = roster.worth();
                if (without >= worth && roster.canBeDriven(stay.day())) {
                    worth = without;
                } else {
                    roster.add(stay);
                }
            }
        }
    }

    private void restoreBest() {
        for (int day = 0; day < problem.days().size(); day++) {
            roster.restore(day, best.get(day));
        }
        worth = bestWorth;
    }

    public Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - startNanos);
    }

    public boolean limitReached() {
        return doneShare() >= 1;
    }

    /** Share of the nearer limit that is used up, 0 to 1. */
    private double doneShare() {
        double ofTime = settings.time().isZero() ? 1
                : (double) elapsed().toMillis() / Math.max(1, settings.time().toMillis());
        double ofIterations = settings.iterations().isEmpty() ? 0
                : settings.iterations().getAsLong() == 0 ? 1
                        : (double) iteration / settings.iterations().getAsLong();
        return Math.min(1, Math.max(ofTime, ofIterations));
    }
}
