package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** What people read stands in catalogues (see org.straddle.words), not in the code. */
class WordsInCodeTest {

    /** The demo writes an event; what stands in an event is data, in the language of who wrote it. */
    private static final Set<String> DATA = Set.of("demo");

    /** Files whose literals are words of a format, not of a language, each with the format. */
    private static final Map<String, String> NOTATIONS = Map.ofEntries(
            Map.entry("Guide.java", "headings of the pages, which are files of a language"),
            Map.entry("PluralRule.java", "rules of plurals as the Unicode CLDR writes them"),
            Map.entry("SaveJournal.java", "lines of the journal of a save"),
            Map.entry("TleNotation.java", "columns of a two-line element set"));

    /** Names of separators, properties and parameters are ids. */
    private static final Pattern LABEL = Pattern.compile(
            "(?<!<separator )(?<!<property )(?<!<parameter )\\b(?:name|label|title|description|tooltip|mnemonic)=\"([^%\"][^\"]*)\"|<(?:description|text)>([^%<][^<]*)<");

    @Test
    void whatPeopleReadStandsInCatalogues() {
        assertEquals(Map.of(), found());
    }

    @Test
    void templatesTakeTheirWordsFromCatalogues() {
        assertEquals(List.of(), SourceTree.shipped().stream().flatMap(bundle -> TemplateCall.words(bundle).stream()).toList());
        assertTrue(TemplateCall.in("publish").size() > 50, "a scan that finds no template would pass");
    }

    @Test
    void theScanSeesWords() {
        Path own = SourceTree.root().resolve("bundles/org.straddle.architecture.tests/src/org/straddle/architecture/WordsInCodeTest.java");
        assertTrue(WordsInCode.in(own).stream().anyMatch(found -> found.endsWith("\"these are words\"")), "these are words");
    }

    private static Map<String, List<String>> found() {
        Map<String, List<String>> all = new TreeMap<>();
        for (String bundle : SourceTree.shipped()) {
            List<String> found = new ArrayList<>();
            for (Path file : SourceTree.sources(bundle)) {
                if (!NOTATIONS.containsKey(file.getFileName().toString())) {
                    found.addAll(WordsInCode.in(file));
                }
            }
            found.addAll(labels(bundle));
            if (!found.isEmpty() && !DATA.contains(bundle)) {
                all.put(bundle, found);
            }
        }
        return all;
    }

    private static List<String> labels(String bundle) {
        List<String> found = new ArrayList<>();
        Path plugin = SourceTree.root().resolve("bundles/org.straddle." + bundle + "/plugin.xml");
        if (Files.exists(plugin) && !bundle.startsWith("model")) {
            Matcher label = LABEL.matcher(SourceTree.text(plugin));
            while (label.find()) {
                if (label.group().matches("(?s).*[=>].*[A-Za-z].*")) {
                    found.add(label.group());
                }
            }
        }
        return found;
    }
}
