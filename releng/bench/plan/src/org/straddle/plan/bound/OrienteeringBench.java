package org.straddle.plan.bound;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;

import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.problem.Orienteering;
import org.straddle.plan.problem.Route;

/**
 * Plans instances of the team orienteering problem with time windows: {@code OrienteeringBench FOLDER ROUTES SECONDS
 * [KNOWN]}. FOLDER holds them in their public text form, or is one of them; KNOWN names the best known score of each, a line
 * each: name without ending, score. Prints a table, the mean last.
 */
final class OrienteeringBench {

    private final Map<String, Integer> known = new HashMap<>();
    private final int routes;
    private final Duration time;
    private double gaps;
    private int compared;

    private OrienteeringBench(int routes, Duration time) {
        this.routes = routes;
        this.time = time;
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 3 && args.length != 4) {
            System.err.println("OrienteeringBench FOLDER ROUTES SECONDS [KNOWN]");
            System.exit(2);
        }
        if (!NativeSolvers.load()) {
            System.err.println("The solver's libraries do not load: no bound to compare with.");
            System.exit(1);
        }
        OrienteeringBench bench = new OrienteeringBench(Integer.parseInt(args[1]),
                Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[2]))));
        if (args.length == 4) {
            for (String line : Files.readAllLines(Path.of(args[3]))) {
                String[] words = line.trim().split("\\s+");
                if (words.length == 2) {
                    bench.known.put(words[0], Integer.parseInt(words[1]));
                }
            }
        }
        try (Stream<Path> files = Files.walk(Path.of(args[0]), 1)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".txt")).sorted().toList()) {
                bench.plan(file);
            }
        }
        if (bench.compared > 0) {
            System.out.printf(Locale.ROOT, "| mean of %d | %d | | | | %.2f %% | |%n", bench.compared, bench.routes,
                    bench.gaps / bench.compared);
        }
    }

    private void plan(Path file) throws IOException {
        String name = file.getFileName().toString().replaceAll("\\.txt$", "");
        Orienteering instance;
        try {
            instance = Orienteering.read(file, routes);
        } catch (IllegalArgumentException wrong) {
            System.err.println(file + ": " + wrong.getMessage());
            return;
        }
        BoundedSearch.Found found = BoundedSearch.search(instance.problem(), new PlanSettings(time, 1), PlanProgress.SILENT,
                new NullProgressMonitor());
        List<Route> plan = IntStream.range(0, routes).mapToObj(found.plan().roster()::route).toList();
        int score = instance.score(plan);
        Integer best = known.get(name);
        double gap = best == null ? Double.NaN : 100.0 * (best - score) / best;
        if (best != null) {
            gaps += gap;
            compared++;
        }
        System.out.printf(Locale.ROOT, "| %s | %d | %d | %s | %s | %s | %.1f |%n", name, routes, score,
                found.upperBound().isEmpty() ? "" : "%.1f".formatted(found.upperBound().getAsDouble()),
                best == null ? "" : best.toString(), best == null ? "" : "%.2f %%".formatted(gap),
                found.plan().elapsed().toMillis() / 1000.0);
    }
}
