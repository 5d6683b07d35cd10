package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Nobody is told that something is safe: no caution, no sheet, no page of the guide and no label says it. */
class NoVerdictTest {

    private static final Pattern VERDICT = Pattern.compile("\\b(un)?safe(r|st|ly)?\\b|\\b(risk|danger|hazard)[- ]free\\b|\\bno (risk|danger)\\b",
            Pattern.CASE_INSENSITIVE);

    @Test
    void noTextOfTheProgramPromises() {
        List<String> told = new ArrayList<>();
        int read = 0;
        for (String bundle : SourceTree.shipped()) {
            Path sources = SourceTree.root().resolve("bundles/org.straddle." + bundle + "/src");
            for (String ending : List.of(".properties", ".txt")) {
                for (Path file : SourceTree.files(sources, ending)) {
                    read++;
                    SourceTree.text(file).lines().filter(line -> VERDICT.matcher(line).find())
                            .forEach(line -> told.add(file.getFileName() + ": " + line));
                }
            }
        }
        assertTrue(read > 100, "a scan of little proves little: " + read);
        assertEquals(List.of(), told);
    }

    @Test
    void theScanSeesAPromise() {
        for (String promise : List.of("This site is safe.", "Unsafe!", "safer than", "There is no danger", "a risk-free stop")) {
            assertTrue(VERDICT.matcher(promise).find(), promise);
        }
    }
}
