package org.straddle.guide;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The sources that lie beside this bundle: what the program says stands in its string literals. */
final class Sources {

    static final Path BUNDLES = Path.of("").toAbsolutePath().getParent();

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

    private Sources() {
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The Java files of a bundle, in a fixed order. */
    static List<Path> java(Path bundle) {
        try (Stream<Path> files = Files.walk(bundle.resolve("src"))) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The bundles whose names begin so, without their tests. */
    static List<Path> bundles(String beginning) {
        try (Stream<Path> folders = Files.list(BUNDLES)) {
            return folders.filter(folder -> folder.getFileName().toString().startsWith(beginning)
                    && !folder.toString().endsWith(".tests")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The texts of all catalogues of a bundle, by their keys, each key behind the folder of its catalogue. */
    static Map<String, String> texts(Path bundle) {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(bundle)) {
            for (Path file : files.filter(file -> file.getFileName().toString().matches("(?:messages|plugin)\\.properties"))
                    .filter(file -> !file.startsWith(bundle.resolve("target"))).sorted().toList()) {
                Properties catalogue = new Properties();
                try (Reader reader = Files.newBufferedReader(file)) {
                    catalogue.load(reader);
                }
                catalogue.forEach((key, text) -> texts.put(bundle.relativize(file.getParent()) + " " + key, text.toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    /** The string literals of a piece of Java, in order, without quotes within them. */
    static List<String> literals(String java) {
        return LITERAL.matcher(java).results().map(found -> found.group(1).replace("\\\"", "")).toList();
    }

    /** What stands in quotes in a plain text. */
    static List<String> quoted(String text) {
        return Pattern.compile("\"([^\"]+)\"").matcher(text).results().map((MatchResult found) -> found.group(1)).toList();
    }
}
