package org.straddle.guide;

import java.util.stream.Stream;
import java.util.Properties;
import java.util.Locale;
import java.io.UncheckedIOException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The words out of which a rule makes the labels of its fixes: the texts whose keys stand in its own class and in the
 * classes through which it makes them.
 */
final class FixLabels {

    private static final Pattern KEY = Pattern.compile("Statement\\s*\\.of\\(\\s*\"([^\"]+)\"");
    private static final String GAP = "…";
    /** Shorter ones, such as a blank, would let anything through. */
    private static final int LEAST = 3;

    private final Map<String, String> sources = new TreeMap<>();

    /** What the rules say, by its key. */
    private final Properties texts = new Properties();

    FixLabels() {
        try {
            texts.load(Files.newBufferedReader(Sources.BUNDLES.resolve("org.straddle.check/src/org/straddle/check/messages.properties")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (Path file : Sources.java(Sources.BUNDLES.resolve("org.straddle.check"))) {
            sources.put(file.getFileName().toString().replace(".java", ""), Sources.read(file));
        }
    }

    /** Whether some finding of the rule comes with a fix. */
    boolean isFixed(String rule) {
        return makers(rule).stream().anyMatch(name -> sources.get(name).contains("fixedBy"));
    }

    /** Whether the rule can make such a label; an ellipsis stands for what is filled in. */
    boolean canMake(String rule, String label) {
        List<String> words = makers(rule).stream()
                .flatMap(name -> KEY.matcher(sources.get(name)).results()).map(found -> found.group(1))
                .filter(texts::containsKey).flatMap(key -> Stream.of(texts.getProperty(key).split("\\{[^}]*\\}")))
                .filter(word -> word.length() >= LEAST).toList();
        return isMadeOf(label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1), words);
    }

    private static boolean isMadeOf(String label, List<String> words) {
        if (label.isEmpty()) {
            return true;
        }
        if (label.startsWith(GAP)) {
            return isMadeOf(label.substring(GAP.length()), words);
        }
        return words.stream().anyMatch(word -> label.startsWith(word) && isMadeOf(label.substring(word.length()), words));
    }

    /** The class of the rule, and those that make fixes and are named there or in each other. */
    private Set<String> makers(String rule) {
        Deque<String> open = new ArrayDeque<>(List.of(classOf(rule)));
        Set<String> reached = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            String name = open.pop();
            if (reached.add(name)) {
                sources.keySet().stream().filter(this::makesFixes).filter(maker -> isNamed(maker, sources.get(name)))
                        .forEach(open::add);
            }
        }
        return reached;
    }

    /** Fixes, and the one class that hands on what two rules find with its fixes. */
    private boolean makesFixes(String name) {
        return sources.get(name).contains("implements Fix") || name.equals("PartOfTurn");
    }

    private static boolean isNamed(String name, String source) {
        return Pattern.compile("\\b" + name + "\\b").matcher(source).find();
    }

    /** The class that takes the rule's id for its own; rules that share a class make no fixes. */
    private String classOf(String rule) {
        Pattern own = Pattern.compile("super\\([^;]*Rule\\." + rule.replace('-', '_').toUpperCase(Locale.ROOT) + "\\.id\\(\\)");
        return sources.entrySet().stream().filter(source -> own.matcher(source.getValue()).find())
                .map(Map.Entry::getKey).findFirst().orElse("CannotBeComputed");
    }
}
