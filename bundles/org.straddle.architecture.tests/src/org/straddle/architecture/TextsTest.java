package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.straddle.words.Language;
import org.straddle.words.Message;

import com.github.javaparser.ast.body.EnumDeclaration;

/** Every text of a catalogue is used, and every text that is used is there with the arguments that the code gives. */
class TextsTest {

    /**
     * Words in camel case or with hyphens, of two letters at least; a unit may end it. A constant or the name of a class may
     * stand for a part, and a number that counts lines.
     */
    private static final Pattern PART = Pattern.compile("[a-z]{2,}B?(?:[A-Z][a-z]+)*(?:M|W|V|KV|Wh|MHz|DegC|B)?|[a-z0-9]+(?:-[a-z0-9]+)+|[A-Z][A-Z_]*|[A-Z][A-Za-z]+|\\d+");

    private static final Pattern CONSTANT = Pattern.compile("([A-Z]\\w*)\\.([A-Z][A-Z0-9_]*)");

    /** By simple name; several bundles may have one of a name. */
    private static final Map<String, Set<Set<String>>> ENUMS = enums();

    static List<String> bundles() {
        return SourceTree.shipped();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextIsUsedAndEveryUsedTextIsThere(String bundle) {
        Map<String, TextFile> files = new HashMap<>();
        TextFile.of(bundle).forEach(file -> files.put(file.catalogue(), file));
        List<String> broken = new ArrayList<>();
        Map<String, Set<String>> used = new HashMap<>();
        for (Path source : SourceTree.sources(bundle)) {
            if (!SourceTree.text(source).matches("(?s).*(Catalogue|Statement)\\.of\\(.*")) {
                continue;
            }
            TextCalls read = new TextCalls(source);
            broken.addAll(read.faults());
            for (TextCall call : read.calls()) {
                TextFile file = files.get(call.catalogue());
                if (file == null) {
                    broken.add(call.where() + ": there is no file " + call.catalogue() + " in this bundle");
                } else {
                    hold(call, file, used.computeIfAbsent(call.catalogue(), any -> new TreeSet<>()), broken);
                }
            }
        }
        for (TemplateCall call : TemplateCall.in(bundle)) {
            List<TextFile> saying = files.values().stream().filter(file -> file.texts().containsKey(call.key())).toList();
            if (saying.size() != 1) {
                broken.add(call.where() + ": " + call.key() + " stands in " + saying.size() + " files");
            }
            for (TextFile file : saying) {
                used.computeIfAbsent(file.catalogue(), any -> new TreeSet<>()).add(call.key());
                Set<String> wanted = Message.arguments(file.texts().get(call.key()));
                if (!call.arguments().equals(wanted)) {
                    broken.add(call.where() + ": " + call.key() + " wants " + wanted + " and is given " + call.arguments());
                }
            }
        }
        for (TextFile file : files.values()) {
            if (file.file().endsWith("commands.properties")) {
                // The library of the command line fetches these by the names of commands and options; its tests hold them.
                continue;
            }
            file.texts().keySet().stream().filter(key -> !used.getOrDefault(file.catalogue(), Set.of()).contains(key))
                    .forEach(key -> broken.add(file.catalogue() + ": nobody says " + key));
        }
        assertEquals(List.of(), broken);
    }

    private static void hold(TextCall call, TextFile file, Set<String> used, List<String> broken) {
        Set<String> said = new TreeSet<>(call.keys());
        for (String prefix : call.prefixes()) {
            List<String> begun = file.texts().keySet().stream().filter(key -> key.startsWith(prefix)).toList();
            if (begun.isEmpty()) {
                broken.add(call.where() + ": no text begins with " + prefix);
            }
            said.addAll(begun);
        }
        if (call.constants()) {
            file.texts().keySet().stream().filter(key -> CONSTANT.matcher(key).matches()).forEach(said::add);
        }
        used.addAll(said);
        Set<String> wanted = new TreeSet<>();
        for (String key : said) {
            String text = file.texts().get(key);
            if (text == null) {
                broken.add(call.where() + ": there is no text " + key);
                return;
            }
            try {
                wanted.addAll(Message.arguments(text));
            } catch (IllegalArgumentException e) {
                return; // said by the test below
            }
        }
        if (call.arguments() != null && !(call.constants() ? call.arguments().containsAll(wanted) || call.arguments().isEmpty()
                : call.arguments().equals(wanted))) {
            broken.add(call.where() + ": " + said + " wants " + wanted + " and is given " + call.arguments());
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextCanBeSaidInPseudoToo(String bundle) {
        List<String> broken = new ArrayList<>();
        for (TextFile file : TextFile.of(bundle)) {
            file.twice().forEach(key -> broken.add(file.catalogue() + ": " + key + " stands twice"));
            file.texts().forEach((key, text) -> {
                try {
                    Message.arguments(text);
                    String pseudo = Message.print(text, Language.PSEUDO, Map.of());
                    if (!text.contains("plural") && !text.contains("number") && !text.isBlank() && !pseudo.startsWith("⟦")) {
                        broken.add(file.catalogue() + ": " + key + " is " + pseudo);
                    }
                } catch (IllegalArgumentException e) {
                    broken.add(file.catalogue() + ": " + key + ": " + e.getMessage());
                }
                if (text.contains("''")) {
                    broken.add(file.catalogue() + ": " + key + ": one apostrophe is enough");
                }
            });
        }
        assertEquals(List.of(), broken);
    }

    /** A key says what the text is for. What a script cuts out of a text does not: {@code oneDAy}, {@code bIrd}, {@code lookUp2}. */
    @ParameterizedTest
    @MethodSource("bundles")
    void everyKeyIsAName(String bundle) {
        assertEquals(List.of(), TextFile.of(bundle).stream().filter(file -> !file.file().endsWith("commands.properties")).flatMap(file -> file.texts().keySet().stream()
                .filter(key -> !isName(key)).map(key -> file.catalogue() + ": " + key)).toList());
    }

    @Test
    void theShapeOfKeysIsSeen() {
        for (String bad : List.of("sheetActions.oneDAy", "banDialog.bIrd", "cautions.lookUpBefore2", "load.vehicleSLoad", "turnCost.goodS", "a_b.c")) {
            assertFalse(isName(bad), bad);
        }
        for (String good : List.of("passes.filter.tooltip", "title.bird-idle", "WorkMode.FM", "feature.markErrorM", "column.voltageKV", "ban.1")) {
            assertTrue(isName(good), good);
        }
    }

    private static boolean isName(String key) {
        return CONSTANT.matcher(key).matches() || Stream.of(key.split("\\.")).allMatch(part -> PART.matcher(part).matches());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyConstantOfAnEnumHasItsText(String bundle) {
        List<String> broken = new ArrayList<>();
        for (TextFile file : TextFile.of(bundle)) {
            Map<String, Set<String>> families = new HashMap<>();
            for (String key : file.texts().keySet()) {
                Matcher constant = CONSTANT.matcher(key);
                if (constant.matches()) {
                    families.computeIfAbsent(constant.group(1), any -> new TreeSet<>()).add(constant.group(2));
                }
            }
            families.forEach((type, constants) -> {
                if (!ENUMS.getOrDefault(type, Set.of()).contains(constants)) {
                    broken.add(file.catalogue() + ": " + type + " has " + ENUMS.get(type) + ", texts are for " + constants);
                }
            });
        }
        assertEquals(List.of(), broken);
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void commandsAndViewsTakeTheirTextsFromTheBundlesFile(String bundle) {
        assertEquals(List.of(), PluginTexts.faults(bundle));
    }

    @Test
    void theScanSeesTexts() {
        assertTrue(TextFile.of("model").stream().mapToInt(file -> file.texts().size()).sum() > 30);
        Path naming = SourceTree.sources("model").stream().filter(file -> file.endsWith("Naming.java")).findFirst().orElseThrow();
        assertTrue(new TextCalls(naming).calls().size() > 10, "a scan that finds nothing would pass every rule above");
    }

    private static Map<String, Set<Set<String>>> enums() {
        Map<String, Set<Set<String>>> enums = new HashMap<>();
        ModelEnums.constants().forEach((type, constants) -> enums.computeIfAbsent(type, any -> new HashSet<>()).add(constants));
        SourceTree.shipped().stream().flatMap(bundle -> SourceTree.sources(bundle).stream())
                .filter(file -> SourceTree.text(file).contains("enum ")).forEach(file -> JavaSource.of(file)
                        .findAll(EnumDeclaration.class).forEach(type -> enums.computeIfAbsent(type.getNameAsString(), any -> new HashSet<>())
                                .add(new TreeSet<>(type.getEntries().stream().map(entry -> entry.getNameAsString()).toList()))));
        return enums;
    }
}
