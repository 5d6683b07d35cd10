package org.straddle.sky;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs all ways side by side and prints one table. Ways in other languages are programs that read the file of
 * {@link Rove#write} and print the number of passes and the seconds they took.
 */
public final class Bench {

    private record Row(String way, long birdSiteDays, double wallMs, double cpuMs, double passes) {
        double microsEach() {
            return 1000 * wallMs / birdSiteDays;
        }
    }

    private Bench() {
    }

    /** @param commands programs to compare with, each one argument: a name, a bar, and the command line */
    public static void main(String[] commands) throws RunnerException, IOException, InterruptedException {
        List<Row> rows = new ArrayList<>();
        rows.add(measured("oursLarge", "Straddle, 30 birds x 1000 sites x 10 days", SkyBench.LARGE.birdSiteDays()));
        rows.add(measured("oursMasked", "Straddle, the same over masks of 7 corners", SkyBench.MASKED.birdSiteDays()));
        rows.add(measured("oursHalfTheBirds", "Straddle, 15 birds x 1000 sites x 10 days",
                SkyBench.HALF_THE_BIRDS.birdSiteDays()));
        rows.add(measured("oursHalfTheSites", "Straddle, 30 birds x 500 sites x 10 days",
                SkyBench.HALF_THE_SITES.birdSiteDays()));
        rows.add(measured("oursHalfTheDays", "Straddle, 30 birds x 1000 sites x 5 days",
                SkyBench.HALF_THE_DAYS.birdSiteDays()));
        rows.add(measured("oursOneMask", "Straddle, the same after one site's mask changed",
                SkyBench.LARGE.birds().size() * SkyBench.LARGE.window().duration().toDays()));
        rows.add(measured("oursSample", "Straddle, sample of 5 x 20 x 1", SkyBench.SAMPLE.birdSiteDays()));
        rows.add(measured("orekitSample", "Orekit detectors, sample, one thread", SkyBench.SAMPLE.birdSiteDays()));
        Path input = Files.createTempFile("rove", ".txt");
        SkyBench.SAMPLE.write(input);
        for (String command : commands) {
            String[] parts = command.split("\\|", 2);
            outside(parts[0] + ", sample", parts[1], input).ifPresent(rows::add);
        }
        Files.delete(input);
        print(rows);
        System.out.printf(Locale.ROOT, "From cancelling the search over masks to its return: %.0f ms at worst of %d (aim: 100).%n",
                Cancelling.worstMs(), Cancelling.TIMES);
    }

    private static Row measured(String benchmark, String way, long birdSiteDays) throws RunnerException {
        RunResult result = new Runner(new OptionsBuilder().include(SkyBench.class.getName() + "\\." + benchmark + "$")
                .build()).run().iterator().next();
        int shots = result.getParams().getMeasurement().getCount();
        return new Row(way, birdSiteDays, result.getPrimaryResult().getScore(), counted(result, "cpuMs") / shots,
                counted(result, "passes") / shots);
    }

    private static double counted(RunResult result, String name) {
        return Optional.ofNullable(result.getSecondaryResults().get(name)).map(Result::getStatistics)
                .map(statistics -> statistics.getSum()).orElse(Double.NaN);
    }

    private static Optional<Row> outside(String way, String command, Path input) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        words.add(input.toString());
        Process process = new ProcessBuilder(words).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String line;
        try (BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            line = out.readLine();
        }
        if (process.waitFor() != 0 || line == null) {
            System.err.println(way + " failed and is left out.");
            return Optional.empty();
        }
        String[] numbers = line.trim().split(" ");
        return Optional.of(new Row(way, SkyBench.SAMPLE.birdSiteDays(), 1000 * Double.parseDouble(numbers[1]), Double.NaN,
                Double.parseDouble(numbers[0])));
    }

    private static void print(List<Row> rows) {
        double ours = rows.get(0).microsEach();
        System.out.printf(Locale.ROOT, "%n%s, %s, %d processors, load %.1f%n", Instant.now().truncatedTo(ChronoUnit.MINUTES),
                System.getProperty("java.vm.name") + " " + Runtime.version(), Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        System.out.println("The cost grows evenly with birds, sites and days when the ratio of the halves is about 1; what following a"
                + " bird costs is shared by its sites.");
        System.out.println("Elevation 0 unless said. A bird-site-day is one bird over one site for a day; the ratio is by time for each,"
                + " to the first row.");
        System.out.printf("%-50s %14s %10s %10s %9s %10s %7s%n", "", "bird-site-days", "wall ms", "CPU ms", "passes",
                "us/b-s-day", "ratio");
        for (Row row : rows) {
            System.out.printf(Locale.ROOT, "%-50s %14d %10.1f %10s %9s %10.1f %7.1f%n", row.way, row.birdSiteDays, row.wallMs,
                    plain(row.cpuMs), row.passes > 0 ? plain(row.passes) : "", row.microsEach(), row.microsEach() / ours);
        }
    }

    private static String plain(double number) {
        return Double.isNaN(number) ? "" : String.format(Locale.ROOT, number < 100 ? "%.1f" : "%.0f", number);
    }
}
