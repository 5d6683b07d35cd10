package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Rules of conduct that every line of the project keeps. */
class ConductTest {

    private static final Pattern STRING = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    /** Nobody can promise that a roadside is free of danger, so the word for it is never printed. */
    private static final Pattern PROMISE = Pattern.compile("(?i)(?<![\\w./-])(?:un)?safe(?![\\w-])");

    private static final Pattern EMPTY_NAME = Pattern.compile("\\w*(?:Manager|Helper|Utils?|Impl)\\.java");

    /** A path of somebody's machine, or a host that packages come from. */
    private static final Pattern OUTSIDE = Pattern.compile(
            "(?<![\\w.])/(?:work|home|root)/\\w+|(?<![\\w./])/tmp/[a-z]+/|https?://[\\w.]*(?:maven\\.org|npmjs|debian\\.org)");

    @Test
    void noTextPromisesThatSomethingIsFreeOfDanger() {
        List<String> broken = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                Matcher string = STRING.matcher(SourceTree.text(file));
                while (string.find()) {
                    if (PROMISE.matcher(string.group(1)).find()) {
                        broken.add(file.getFileName() + ": " + string.group());
                    }
                }
            }
            for (String ending : List.of(".ftl", ".ftlh", "plugin.xml", ".properties", ".xcore")) {
                for (Path file : resources(bundle, ending)) {
                    if (PROMISE.matcher(SourceTree.text(file)).find()) {
                        broken.add(file.toString());
                    }
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void thePromiseIsRecognised() {
        assertTrue(PROMISE.matcher("This site is safe.").find());
        assertTrue(PROMISE.matcher("Safe to stop").find());
        assertTrue(!PROMISE.matcher("safety notes, org.straddle.safety").find());
    }

    /** An event folder comes from somebody else: one class knows how to reach into it without being led out of it. */
    @Test
    void filesOfAnEventAreReachedInOneWay() {
        List<String> files = new ArrayList<>();
        for (Path file : SourceTree.sources("store")) {
            if (SourceTree.text(file).matches("(?s).*\\b(Files|FileChannel|File(In|Out)putStream|RandomAccessFile)\\s*\\..*")) {
                files.add(file.getFileName().toString());
            }
        }
        assertEquals(List.of("EventTree.java", "OpenFolder.java", "SaveSeal.java"), files.stream().sorted().toList());
    }

    /** A job may end after the window was closed: one class knows that. */
    @Test
    void newsReachesTheUiThreadInOneWay() {
        List<String> others = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                if (SourceTree.text(file).contains(".asyncExec(")) {
                    others.add(file.getFileName().toString());
                }
            }
        }
        assertEquals(List.of("UiThread.java"), others);
    }

    /** One that is shown earlier makes GTK speak up on the error output, which is no message to the user. */
    @Test
    void tablesWithColumnsAreShownOnceTheyHaveASize() {
        List<String> early = new ArrayList<>();
        int tables = 0;
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                String text = SourceTree.text(file);
                if (text.contains(".setHeaderVisible(true)")) {
                    tables++;
                    if (!text.contains("OnceSized.show(")) {
                        early.add(file.getFileName().toString());
                    }
                }
            }
        }
        assertEquals(List.of(), early);
        assertTrue(tables > 5, "only " + tables + " files with tables were found");
    }

    @Test
    void everyClassIsNamedForWhatItIs() {
        List<String> broken = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            SourceTree.sources(bundle).stream().map(file -> file.getFileName().toString())
                    .filter(name -> EMPTY_NAME.matcher(name).matches()).forEach(broken::add);
        }
        assertEquals(List.of(), broken);
    }

    /** Else a name could act on a terminal: only the command line as a whole knows where its output goes, and what guards it. */
    @Test
    void commandsPrintThroughOneGate() {
        Pattern past = Pattern.compile("System\\.(?:out|err|console)|new (?:PrintWriter|PrintStream)|FileDescriptor|printStackTrace\\(\\)");
        List<String> broken = new ArrayList<>();
        for (Path file : SourceTree.sources("cli")) {
            if (!file.endsWith("StraddleCommand.java") && past.matcher(SourceTree.text(file)).find()) {
                broken.add(file.getFileName().toString());
            }
        }
        assertEquals(List.of(), broken);
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                // A window that cannot open says so on the terminal, inert.
                boolean starts = file.endsWith("StraddleCommand.java") || file.endsWith("StraddleApplication.java");
                if (!starts && Pattern.compile("System\\.(?:out|err)\\b").matcher(SourceTree.text(file)).find()) {
                    broken.add(file.getFileName().toString());
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void nothingPointsAtAMachineOrAPackageHost() {
        List<String> broken = new ArrayList<>();
        for (String folder : List.of("bundles", "features", "releng", "targets", ".ci", ".mvn")) {
            for (String ending : List.of(".java", ".xml", ".xcore", ".md", ".ftl", ".ftlh", ".py", ".js", "run", "test", ".sh")) {
                for (Path file : SourceTree.files(SourceTree.root().resolve(folder), ending)) {
                    String path = SourceTree.root().relativize(file).toString();
                    if (path.contains("target/") || path.contains("emf-gen/") || path.endsWith("ConductTest.java")) {
                        continue;
                    }
                    Matcher outside = OUTSIDE.matcher(SourceTree.text(file));
                    if (outside.find()) {
                        broken.add(path + ": " + outside.group());
                    }
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void onlyTheTopLevelThatTheReadmeNamesExists() {
        List<String> allowed = List.of("DEVELOPERS.md", "README.md", "bundles", "features", "out", "pom.xml", "releng",
                "targets");
        try (java.util.stream.Stream<Path> top = java.nio.file.Files.list(SourceTree.root())) {
            assertEquals(List.of(), top.map(path -> path.getFileName().toString())
                    .filter(name -> !name.startsWith(".") && !allowed.contains(name)).sorted().toList());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void classesOfTestsAreNamedSoThatTheyAreFound() {
        Pattern test = Pattern.compile("\\n    @(Test|ParameterizedTest|TestFactory|RepeatedTest)\\b");
        List<Path> classes = SourceTree.all().stream().filter(bundle -> bundle.endsWith(".tests"))
                .flatMap(bundle -> SourceTree.sources(bundle).stream()).filter(file -> test.matcher(SourceTree.text(file)).find())
                .toList();
        assertTrue(classes.size() > 200, "a scan of little proves little: " + classes.size());
        assertEquals(List.of(), classes.stream().filter(file -> !file.toString().endsWith("Test.java")).toList());
    }

    private static List<Path> resources(String bundle, String ending) {
        Path folder = SourceTree.root().resolve("bundles").resolve("org.straddle." + bundle);
        return SourceTree.files(folder, ending).stream()
                .filter(file -> !file.toString().contains("emf-gen") && !file.toString().contains("target/")).toList();
    }
}
