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

    /** Packages whose texts are not moved yet. It only ever gets shorter: one that is clean must leave it. */
    private static final Set<String> NOT_YET = new TreeSet<>(List.of(
            "org.straddle.atlas.layer", "org.straddle.atlas.mark", "org.straddle.atlas.page",
            "org.straddle.atlas.picture", "org.straddle.atlas.plane", "org.straddle.atlas.scene", "org.straddle.check",
            "org.straddle.check.mend", "org.straddle.check.rules", "org.straddle.check.rules.bird",
            "org.straddle.check.rules.event", "org.straddle.check.rules.gear", "org.straddle.check.rules.people",
            "org.straddle.check.rules.plan", "org.straddle.check.rules.site", "org.straddle.check.run",
            "org.straddle.cli", "org.straddle.daysheet.edit", "org.straddle.daysheet.layout",
            "org.straddle.daysheet.fits", "org.straddle.daysheet.page", "org.straddle.daysheet.paint",
            "org.straddle.daysheet.sheet", "org.straddle.demo", "org.straddle.drawing", "org.straddle.exchange",
            "org.straddle.exchange.elements", "org.straddle.exchange.fixes", "org.straddle.exchange.formats",
            "org.straddle.exchange.maps", "org.straddle.exchange.sites", "org.straddle.grid", "org.straddle.guide",
            "org.straddle.kit", "org.straddle.outlook", "org.straddle.outlook.things", "org.straddle.plan",
            "org.straddle.plan.bound", "org.straddle.plan.event", "org.straddle.plan.problem",
            "org.straddle.publish", "org.straddle.safety", "org.straddle.sky", "org.straddle.store",
            "org.straddle.survey", "org.straddle.terrain", "org.straddle.ui.daysheet", "org.straddle.ui.editors",
            "org.straddle.ui.explorer", "org.straddle.ui.fields", "org.straddle.ui.findings", "org.straddle.ui.guide",
            "org.straddle.ui.horizon", "org.straddle.ui.importing", "org.straddle.ui.kit", "org.straddle.ui.map",
            "org.straddle.ui.parts", "org.straddle.ui.passes", "org.straddle.ui.planning", "org.straddle.ui.safety",
            "org.straddle.ui.scout", "org.straddle.ui.session", "org.straddle.ui.sky", "org.straddle.ui.sky.pass",
            "org.straddle.ui.sky.picture", "org.straddle.ui.sky.reach", "org.straddle.ui.things",
            "org.straddle.ui.workbench", "ui.daysheet/plugin.xml", "ui.kit/plugin.xml", "ui.map/plugin.xml",
            "ui.safety/plugin.xml", "ui.scout/plugin.xml", "ui.sky/plugin.xml", "ui/plugin.xml"));

    /** Files whose literals are words of a format, not of a language, each with the format. */
    private static final Map<String, String> NOTATIONS = Map.of(
            "PluralRule.java", "rules of plurals as the Unicode CLDR writes them");

    private static final Pattern LABEL = Pattern.compile(
            "\\b(?:name|label|title|description|tooltip|mnemonic)=\"([^%\"][^\"]*)\"|<(?:description|text)>([^%<][^<]*)<");

    @Test
    void whatPeopleReadStandsInCatalogues() {
        Map<String, List<String>> found = found();
        found.keySet().removeAll(NOT_YET);
        assertEquals(Map.of(), found);
    }

    @Test
    void whatIsMovedLeavesTheList() {
        Set<String> clean = new TreeSet<>(NOT_YET);
        clean.removeAll(found().keySet());
        assertEquals(Set.of(), clean);
    }

    @Test
    void theScanSeesWords() {
        Path own = SourceTree.root().resolve("bundles/org.straddle.architecture.tests/src/org/straddle/architecture/WordsInCodeTest.java");
        assertTrue(WordsInCode.in(own).stream().anyMatch(found -> found.endsWith("\"these are words\"")), "these are words");
    }

    /** By package, or by bundle for its plugin.xml. */
    private static Map<String, List<String>> found() {
        Map<String, List<String>> all = new TreeMap<>();
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                String folder = JavaSource.of(file).getPackageDeclaration().orElseThrow().getNameAsString();
                List<String> found = NOTATIONS.containsKey(file.getFileName().toString()) ? List.of() : WordsInCode.in(file);
                if (!found.isEmpty()) {
                    all.computeIfAbsent(folder, any -> new ArrayList<>()).addAll(found);
                }
            }
            Path plugin = SourceTree.root().resolve("bundles/org.straddle." + bundle + "/plugin.xml");
            if (Files.exists(plugin) && !bundle.startsWith("model")) {
                Matcher label = LABEL.matcher(SourceTree.text(plugin));
                while (label.find()) {
                    if (label.group().matches("(?s).*[=>].*[A-Za-z].*")) {
                        all.computeIfAbsent(bundle + "/plugin.xml", any -> new ArrayList<>()).add(label.group());
                    }
                }
            }
        }
        return all;
    }
}
