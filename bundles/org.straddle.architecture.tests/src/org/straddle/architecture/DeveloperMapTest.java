package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md is the map of the tree: what it names is there, and what is there it names. */
class DeveloperMapTest {

    /** Classes of libraries that it names. */
    private static final Set<String> OF_LIBRARIES = Set.of("String", "Instant", "Duration", "LocalDate", "IProgressMonitor", "Consumer",
            "IllegalArgumentException");

    private static final Pattern QUOTED = Pattern.compile("`([^`\n]+)`");
    private static final Pattern CLASS = Pattern.compile("(?<![\\w./@-])[A-Z][a-z]+(?:[A-Z][a-z0-9]*)*(?=$|[.<(,) ])");
    private static final Pattern PATH = Pattern.compile("(?:releng|bundles|targets|features|\\.ci)/[\\w./-]*\\w");
    private static final Pattern PACKAGE = Pattern.compile("org\\.straddle(?:\\.[a-z]+)+(?:\\.\\{[a-z,]+\\})?");
    /** What a run makes, an example, and a name of the workbench. */
    private static final Pattern MADE = Pattern.compile("\\.run/.*|.*<name>.*|org\\.straddle\\.ui\\.perspective\\.plan");

    private static String map;
    private static final Set<String> CLASSES = new HashSet<>();
    private static final Set<String> PACKAGES = new HashSet<>();

    @BeforeAll
    static void read() {
        map = SourceTree.text(SourceTree.root().resolve("DEVELOPERS.md"));
        for (Path bundle : folders(SourceTree.root().resolve("bundles"))) {
            PACKAGES.add(bundle.getFileName().toString());
            Path src = bundle.resolve("src");
            for (Path file : SourceTree.files(src, ".java")) {
                CLASSES.add(file.getFileName().toString().replaceFirst("\\.java$", ""));
                PACKAGES.add(src.relativize(file.getParent()).toString().replace('/', '.'));
            }
        }
        for (String parent : List.of("targets", "releng", "features")) {
            folders(SourceTree.root().resolve(parent)).forEach(folder -> PACKAGES.add(folder.getFileName().toString()));
        }
        Matcher ofModel = Pattern.compile("(?m)^(?:abstract )?class (\\w+)").matcher(SourceTree.text(
                SourceTree.root().resolve("bundles/org.straddle.model/model/straddle.xcore")));
        ofModel.results().forEach(found -> CLASSES.add(found.group(1)));
    }

    private static List<Path> folders(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> quoted() {
        return QUOTED.matcher(map).results().map(found -> found.group(1)).toList();
    }

    @Test
    void everyPathIsThere() {
        List<String> paths = PATH.matcher(map).results().map(MatchResult::group).toList();
        assertTrue(paths.size() > 10, paths::toString);
        assertEquals(List.of(), paths.stream().distinct()
                .filter(path -> !Files.exists(SourceTree.root().resolve(path)) && !path.startsWith("bundles/org.straddle.ui.<")).toList());
    }

    @Test
    void everyClassIsThere() {
        List<String> named = new ArrayList<>();
        for (String words : quoted()) {
            // Sentences and examples of texts are no names.
            if (words.matches("[A-Z]\\w*(?:[.(].*)?")) {
                CLASS.matcher(words).results().limit(1).forEach(found -> named.add(found.group()));
            }
        }
        assertTrue(named.size() > 30, named::toString);
        assertEquals(List.of(), named.stream().distinct()
                .filter(name -> !CLASSES.contains(name) && !OF_LIBRARIES.contains(name)).toList());
    }

    @Test
    void everyPackageIsThere() {
        List<String> missing = new ArrayList<>();
        for (String words : quoted()) {
            if (MADE.matcher(words).matches()) {
                continue;
            }
            PACKAGE.matcher(words).results().flatMap(found -> each(found.group()))
                    .filter(name -> !PACKAGES.contains(name)).forEach(missing::add);
        }
        assertEquals(List.of(), missing);
    }

    private static Stream<String> each(String name) {
        int brace = name.indexOf('{');
        return brace < 0 ? Stream.of(name)
                : Stream.of(name.substring(brace + 1, name.length() - 1).split(",")).map(last -> name.substring(0, brace) + last);
    }

    @Test
    void everyBundleAndEveryFolderOfRelengIsNamed() {
        List<String> missing = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            if (!map.contains("`org.straddle." + bundle + "`") && !map.contains("`." + bundle + "`")) {
                missing.add(bundle);
            }
        }
        for (Path folder : folders(SourceTree.root().resolve("releng"))) {
            String name = folder.getFileName().toString();
            if (!map.contains("releng/" + name)) {
                missing.add("releng/" + name);
            }
        }
        assertEquals(List.of(), missing);
    }
}
