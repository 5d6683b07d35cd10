package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/**
 * A bundle requires every bundle of ours that it imports from, and imports only what that one exports; a flat class path
 * would not notice.
 */
class RequiredBundlesTest {

    private static final Pattern PACKAGE = Pattern.compile("(?m)^package ([\\w.]+);");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (?:static )?(org\\.straddle(?:\\.[a-z]\\w*)*)\\.");

    /** Whose packages are generated. */
    private static final Map<String, String> GENERATED = Map.of("org.straddle.model", "model",
            "org.straddle.model.util", "model", "org.straddle.model.provider", "model.edit");

    @Test
    void whatIsImportedIsRequired() {
        Map<String, String> owners = owners();
        Set<String> missing = new TreeSet<>();
        for (String bundle : SourceTree.shipped()) {
            String manifest = SourceTree.text(SourceTree.root().resolve("bundles/org.straddle." + bundle + "/META-INF/MANIFEST.MF"));
            for (Path file : SourceTree.sources(bundle)) {
                Matcher line = IMPORT.matcher(SourceTree.text(file));
                while (line.find()) {
                    String owner = owners.get(line.group(1));
                    if (owner != null && !owner.equals(bundle) && !requires(manifest, owner)) {
                        missing.add(bundle + " imports from " + owner);
                    }
                }
            }
        }
        assertEquals(Set.of(), missing);
        assertTrue(owners.size() > 30, owners::toString);
    }

    /** Rooms that are not exported, such as the tracks of the sky, are for their own bundle and its tests alone. */
    @Test
    void whatIsImportedIsExported() {
        Map<String, String> owners = owners();
        Set<String> hidden = new TreeSet<>(owners.keySet());
        SourceTree.shipped().forEach(bundle -> hidden.removeAll(SourceTree.exports(bundle)));
        Set<String> seen = new TreeSet<>();
        for (String bundle : SourceTree.all()) {
            String own = bundle.replaceFirst("\\.tests$", "");
            for (Path file : SourceTree.sources(bundle)) {
                Matcher line = IMPORT.matcher(SourceTree.text(file));
                while (line.find()) {
                    if (hidden.contains(line.group(1)) && !owners.get(line.group(1)).equals(own)) {
                        seen.add(bundle + " imports " + line.group(1));
                    }
                }
            }
        }
        assertEquals(Set.of(), seen);
        assertTrue(hidden.contains("org.straddle.sky.track"), hidden::toString);
    }

    private static Map<String, String> owners() {
        Map<String, String> owners = new HashMap<>(GENERATED);
        SourceTree.shipped().forEach(bundle -> SourceTree.sources(bundle).forEach(file -> owners.put(packageOf(file), bundle)));
        return owners;
    }

    private static boolean requires(String manifest, String bundle) {
        int at = manifest.indexOf("Require-Bundle:");
        return at >= 0 && Pattern.compile("[ ,]org\\.straddle\\." + Pattern.quote(bundle) + "[,;\\s]")
                .matcher(manifest.substring(at).split("\n(?! )")[0].replace("\n ", "") + " ").find();
    }

    private static String packageOf(Path file) {
        Matcher own = PACKAGE.matcher(SourceTree.text(file));
        return own.find() ? own.group(1) : "";
    }
}
