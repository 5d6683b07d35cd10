package org.straddle.testing;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import com.sun.management.OperatingSystemMXBean;
import org.junit.platform.engine.DiscoverySelector;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.reporting.legacy.xml.LegacyXmlReportGeneratingListener;

/**
 * Runs the tests of several bundles one bundle after the other in one process: starting a process for each takes longer than
 * most of their tests.
 *
 * <p>{@code TestRun COUNTS CLASSES PRODUCT|- BUNDLE…}: adds what it counted to the file COUNTS. Classes whose name does not match
 * the pattern CLASSES are passed over. With a PRODUCT the tests run in its framework, otherwise on the class path. A BUNDLE
 * is a folder of tests that is built; it gets a report for machines. Ends with 1 where a test failed.
 */
final class TestRun {

    private static final OperatingSystemMXBean PROCESS = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    /** Takes the report alone; what tests print goes to the other output. */
    private final PrintStream report;
    private final Tally all = new Tally();
    private final String classes;

    private TestRun(PrintStream report, String classes) {
        this.report = report;
        this.classes = classes;
    }

    public static void main(String[] arguments) throws Exception {
        Path counts = Path.of(arguments[0]);
        PrintStream report = System.out;
        System.setOut(System.err);
        TestRun run = new TestRun(report, arguments[1]);
        List<Path> bundles = Stream.of(arguments).skip(3).map(Path::of).toList();
        if (arguments[2].equals("-")) {
            run.all(bundles, (bundle, name) -> Class.forName(name, false, TestRun.class.getClassLoader()));
        } else {
            try (Framework framework = Framework.of(Path.of(arguments[2]), bundles)) {
                run.all(bundles, framework);
            }
        }
        Files.writeString(counts, run.all + "\n");
        // Threads of the workbench may still run.
        System.exit(run.all.failed() ? 1 : 0);
    }

    private void all(List<Path> bundles, ClassSource source) throws Exception {
        Launcher launcher = LauncherFactory.create();
        for (Path bundle : bundles) {
            long start = System.nanoTime();
            long cpuStart = PROCESS.getProcessCpuTime();
            Tally tally = new Tally();
            Path reports = Files.createDirectories(bundle.resolve("target/surefire-reports"));
            launcher.execute(LauncherDiscoveryRequestBuilder.request().selectors(selectors(bundle, source)).build(), tally,
                    new LegacyXmlReportGeneratingListener(reports, new PrintWriter(System.err)));
            tally.told().forEach(report::println);
            report.printf(Locale.ROOT, "%s, Time elapsed: %.1f s, processor: %.1f s -- in %s%n", tally, (System.nanoTime() - start) / 1e9,
                    (PROCESS.getProcessCpuTime() - cpuStart) / 1e9, bundle.getFileName());
            all.add(tally);
        }
    }

    private List<DiscoverySelector> selectors(Path bundle, ClassSource source) throws IOException, ClassNotFoundException {
        List<DiscoverySelector> selectors = new ArrayList<>();
        for (String name : topLevelClasses(bundle.resolve("target/classes"))) {
            if (name.matches(classes)) {
                selectors.add(DiscoverySelectors.selectClass(source.load(bundle, name)));
            }
        }
        return selectors;
    }

    private static List<String> topLevelClasses(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> folder.relativize(file).toString()).filter(name -> name.endsWith(".class"))
                    .filter(name -> !name.contains("$") && !name.contains("-"))
                    .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.')).sorted().toList();
        }
    }

    /** Where a class of a bundle's tests comes from. */
    interface ClassSource {
        Class<?> load(Path bundle, String name) throws ClassNotFoundException;
    }
}
