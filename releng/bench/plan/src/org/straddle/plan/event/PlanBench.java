package org.straddle.plan.event;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Proposal;
import org.straddle.plan.bound.BoundedSearch;
import org.straddle.plan.bound.NativeSolvers;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.search.NeighbourhoodSearch;

/**
 * Plans invented events in several ways, side by side: {@code PlanBench SIZE SEED SECONDS [fixed]}. Prints one row of a
 * table per way. All gaps are against the bound that the planner proves. With {@code fixed} some stops are pinned and
 * some teams, sites and birds banned, see {@link FixedDecisions}.
 */
final class PlanBench {

    /** Gaps that are aimed at, on two cores and 1 GB. */
    private static double goal(SyntheticEvent.Size size) {
        return switch (size) {
            case SMALL -> 0.01;
            case MEDIUM -> 0.02;
            case LARGE, CROWDED -> 0.03;
        };
    }

    private final SyntheticEvent.Size size;
    private final long seed;
    private final PlanProblem problem;
    private double goalSeconds = Double.NaN;
    private double worth;
    private double bound = Double.POSITIVE_INFINITY;

    private final boolean fixed;

    private PlanBench(SyntheticEvent.Size size, long seed, boolean fixed) {
        this.size = size;
        this.seed = seed;
        this.fixed = fixed;
        Event event = SyntheticEvent.of(size, seed);
        if (fixed) {
            FixedDecisions.in(event, seed);
        }
        problem = EventProblem.of(Outlook.of(event, null)).problem();
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 3 && args.length != 4) {
            System.err.println("PlanBench SIZE SEED SECONDS [fixed]; SIZE is one of " + List.of(SyntheticEvent.Size.values()));
            System.exit(2);
        }
        if (!NativeSolvers.load()) {
            System.err.println("The solver's libraries do not load: no bound to compare with.");
            System.exit(1);
        }
        PlanBench bench = new PlanBench(SyntheticEvent.Size.valueOf(args[0].toUpperCase(Locale.ROOT)),
                Long.parseLong(args[1]), args.length == 4);
        bench.run(Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[2]))));
    }

    private void run(Duration time) throws IOException {
        long start = System.nanoTime();
        double next = NextStop.plan(problem).worth();
        double nextSeconds = (System.nanoTime() - start) / 1e9;
        NeighbourhoodSearch.Found greedy = NeighbourhoodSearch.search(problem, PlanSettings.ofIterations(0, seed),
                PlanProgress.SILENT, new NullProgressMonitor());
        NeighbourhoodSearch.Found search = NeighbourhoodSearch.search(problem, new PlanSettings(time.dividedBy(2), seed),
                PlanProgress.SILENT, new NullProgressMonitor());
        BoundedSearch.Found found = BoundedSearch.search(problem, new PlanSettings(time, seed), new PlanProgress() {
            @Override
            public void improved(double better, long iterations, Duration elapsed) {
                worth = better;
                look(elapsed);
            }

            @Override
            public void bounded(double upperBound, double of, Duration elapsed) {
                bound = upperBound;
                look(elapsed);
            }
        }, new NullProgressMonitor());
        double upper = found.upperBound().orElse(Double.NaN);
        if (!fixed) { // whoever plans by hand that way looks at no bans
            row("nearest of the most wanted next", next, upper, nextSeconds, "");
        }
        row("greedy, best day after best day", greedy.roster().worth(), upper, seconds(greedy.elapsed()), "");
        row("neighbourhood search alone", search.roster().worth(), upper, seconds(search.elapsed()),
                search.iterations() + " steps");
        row("planner", found.plan().roster().worth(), upper, seconds(found.plan().elapsed()),
                "%s; within %.0f %% after %.1f s; most memory %d MB".formatted(found.plan().ending(), 100 * goal(size),
                        goalSeconds, mostMemoryMb()));
    }

    private void look(Duration elapsed) {
        OptionalDouble gap = Proposal.gap(worth, OptionalDouble.of(bound));
        if (Double.isNaN(goalSeconds) && gap.isPresent() && gap.getAsDouble() <= goal(size)) {
            goalSeconds = seconds(elapsed);
        }
    }

    private void row(String way, double of, double upper, double seconds, String note) {
        System.out.printf(Locale.ROOT, "| %s %d | %s | %.3f | %.3f | %.2f %% | %.1f | %s |%n",
                size.name().toLowerCase(Locale.ROOT) + (fixed ? ", pins and bans" : ""), seed, way, of, upper, 100 * (1 - of / upper), seconds, note);
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    /** Of the whole process, the solver's libraries included. */
    private static long mostMemoryMb() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream().filter(line -> line.startsWith("VmHWM"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024).findFirst().orElse(0);
    }
}
