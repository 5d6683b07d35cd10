package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Who may know whom. The order below is the one in DEVELOPERS.md; a bundle may import only what stands above it. */
class ImportOrderTest {

    private static final List<String> ORDER = List.of("words", "drawing", "grid", "sky", "terrain", "model", "model.edit",
            "store", "outlook", "exchange", "atlas", "visit", "safety", "kit", "worth", "check", "guide", "plan", "publish",
            "daysheet", "demo", "cli", "ui");

    /** View suites know the shell and the core, never each other. */
    private static final List<String> SUITES = List.of("ui.daysheet", "ui.kit", "ui.map", "ui.planning", "ui.safety", "ui.scout", "ui.sky");

    private static final Pattern WINDOW_TOOLKIT = Pattern.compile(
            "org\\.eclipse\\.(swt|jface|ui)\\b.*|org\\.eclipse\\.e4\\.ui\\b.*|org\\.eclipse\\.nebula\\b.*|org\\.straddle\\.ui\\b.*");

    private static final Pattern IMPORT = Pattern.compile("(?m)^import (?:static )?([\\w.]+)");

    @Test
    void everyBundleHasItsPlaceInTheOrder() {
        List<String> known = new ArrayList<>(ORDER);
        known.addAll(SUITES);
        assertEquals(known.stream().sorted().toList(), SourceTree.shipped());
    }

    @Test
    void aBundleRequiresOnlyWhatStandsAboveIt() {
        List<String> broken = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            for (String required : SourceTree.requirements(bundle)) {
                if (required.startsWith("org.straddle.")
                        && !mayKnow(bundle, required.substring("org.straddle.".length()))) {
                    broken.add(bundle + " requires " + required);
                }
            }
        }
        assertEquals(List.of(), broken);
    }

    private static boolean mayKnow(String bundle, String other) {
        int own = SUITES.contains(bundle) ? ORDER.size() : ORDER.indexOf(bundle);
        int its = ORDER.indexOf(other);
        return its >= 0 && its < own;
    }

    @Test
    void theCoreKnowsNoWindows() {
        List<String> broken = new ArrayList<>();
        for (String bundle : ORDER.subList(0, ORDER.indexOf("ui"))) {
            SourceTree.requirements(bundle).stream().filter(name -> WINDOW_TOOLKIT.matcher(name).matches())
                    .forEach(name -> broken.add(bundle + " requires " + name));
            broken.addAll(imports(bundle, WINDOW_TOOLKIT));
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void skyAndGridKnowNothingOfTheModelFramework() {
        Pattern framework = Pattern.compile("org\\.eclipse\\.emf\\b.*|org\\.straddle\\.model\\b.*");
        List<String> broken = new ArrayList<>();
        for (String bundle : List.of("sky", "grid", "terrain")) {
            SourceTree.requirements(bundle).stream().filter(name -> framework.matcher(name).matches())
                    .forEach(name -> broken.add(bundle + " requires " + name));
            broken.addAll(imports(bundle, framework));
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void onlySkyAndTheReadersKnowTheSpaceDynamicsLibrary() {
        List<String> broken = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            if (!bundle.equals("sky") && !bundle.equals("exchange")) {
                broken.addAll(imports(bundle, Pattern.compile("org\\.orekit\\b.*")));
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void theScanSeesImports() {
        assertTrue(imports("sky", Pattern.compile("java\\.time\\.Instant")).size() > 3,
                "a scan that finds nothing would pass every rule above");
    }

    private static List<String> imports(String bundle, Pattern forbidden) {
        List<String> found = new ArrayList<>();
        SourceTree.sources(bundle).forEach(file -> {
            Matcher line = IMPORT.matcher(SourceTree.text(file));
            while (line.find()) {
                if (forbidden.matcher(line.group(1)).matches()) {
                    found.add(bundle + "/" + file.getFileName() + " imports " + line.group(1));
                }
            }
        });
        return found;
    }
}
