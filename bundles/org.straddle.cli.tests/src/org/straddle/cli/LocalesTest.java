package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The locale of the computer changes no published file, no CSV, no JSON and no exit code. */
class LocalesTest {

    /** Digits of another script, and the letters that Turkish makes of i and I. */
    private static final Pattern OF_A_LOCALE = Pattern.compile("[\\p{Nd}&&[^0-9]]|[ıİ]");
    /** When a revision was published, and lines that say how long the search took. */
    private static final Pattern CLOCK = Pattern.compile("(?<=Revision 1, )[^<\\n]*|(?m:^)[^\\n]* rounds, [^\\n]*");

    private final Locale before = Locale.getDefault();

    @TempDir
    Path folder;

    private String plan;

    @AfterEach
    void restore() {
        Locale.setDefault(before);
    }

    @Test
    void theMainJobIsTheSameEverywhere() throws IOException {
        // The strangest first: what a class keeps from its start would be seen in all.
        Map<String, String> arabic = mainJob("ar-EG");
        Map<String, String> turkish = mainJob("tr-TR");
        Map<String, String> german = mainJob("de-DE");
        Map<String, String> english = mainJob("en-GB");
        assertTrue(english.size() > 12, english.keySet().toString());
        english.forEach((name, text) -> {
            assertEquals(text, german.get(name), name + " in German");
            assertEquals(text, arabic.get(name), name + " in Arabic");
            assertEquals(text, turkish.get(name), name + " in Turkish");
            assertFalse(OF_A_LOCALE.matcher(text).find(), name);
        });
        assertEquals(english.keySet(), arabic.keySet());
    }

    private Map<String, String> mainJob(String locale) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        Path event = folder.resolve(locale).resolve("event");
        Path published = event.resolveSibling("published");
        Path sites = event.resolveSibling("sites.csv");
        Map<String, String> results = new LinkedHashMap<>();
        note(results, "demo", Console.run("demo", event), event);
        note(results, "plan", Console.run("plan", event, "--rounds", 20, "--seed", 1, "--format", "csv"), event);
        // A plan gets ids of its own each time; one for all, so that files can be compared byte for byte.
        if (plan == null) {
            plan = Files.readString(event.resolve("plan.xmi"));
        }
        Files.writeString(event.resolve("plan.xmi"), plan);
        note(results, "check csv", Console.run("check", event, "--format", "csv"), event);
        note(results, "check json", Console.run("check", event, "--format", "json"), event);
        note(results, "check table", Console.run("check", event), event);
        note(results, "passes", Console.run("passes", event, "--least-peak", 60, "--format", "csv"), event);
        note(results, "publish", Console.run("publish", event, "--out", published), event);
        note(results, "export", Console.run("export", event, "--out", sites), event);
        results.put("sites.csv", Files.readString(sites));
        try (Stream<Path> files = Files.walk(published)) {
            for (Path file : files.filter(path -> List.of("html", "txt").contains(ending(path))).sorted().toList()) {
                results.put(published.relativize(file).toString(), CLOCK.matcher(Files.readString(file)).replaceAll("then"));
            }
        }
        return results;
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1);
    }

    private static void note(Map<String, String> results, String job, Console run, Path event) {
        results.put(job, run.code() + "\n" + run.out().replace(event.getParent().toString(), "FOLDER"));
    }
}
