package org.straddle.plan.bound;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.problem.Orienteering;
import org.straddle.plan.problem.Route;

/**
 * Plans an instance of the team orienteering problem with time windows: {@code OrienteeringBench FILE ROUTES SECONDS
 * DECIMALS}. Prints a row of a table. The bound holds for visits that begin at whole tenths of the unit.
 */
final class OrienteeringBench {

    private OrienteeringBench() {
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 4) {
            System.err.println("OrienteeringBench FILE ROUTES SECONDS DECIMALS");
            System.exit(2);
        }
        if (!NativeSolvers.load()) {
            System.err.println("The solver's libraries do not load: no bound to compare with.");
            System.exit(1);
        }
        int routes = Integer.parseInt(args[1]);
        Orienteering instance;
        try {
            instance = Orienteering.read(Path.of(args[0]), routes, Integer.parseInt(args[3]));
        } catch (IllegalArgumentException wrong) {
            System.err.println(args[0] + ": " + wrong.getMessage());
            System.exit(2);
            return;
        }
        BoundedSearch.Found found = BoundedSearch.search(instance.problem(),
                new PlanSettings(Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[2]))), 1), PlanProgress.SILENT,
                new NullProgressMonitor());
        List<Route> plan = IntStream.range(0, routes).mapToObj(found.plan().roster()::route).toList();
        System.out.printf(Locale.ROOT, "| %s | %d | %d | %.2f | %.1f | %s |%n", Path.of(args[0]).getFileName(), routes,
                instance.score(plan), found.upperBound().orElse(Double.NaN), found.plan().elapsed().toMillis() / 1000.0,
                found.plan().ending());
    }
}
