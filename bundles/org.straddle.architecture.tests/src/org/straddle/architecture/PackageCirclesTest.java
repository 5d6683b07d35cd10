package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/**
 * Packages know one another in one direction only. Circles are the strongly connected components of the
 * graph of imports, found by Tarjan's algorithm (Depth-first search and linear graph algorithms, SIAM J. Comput. 1972).
 */
class PackageCirclesTest {

    private static final Pattern PACKAGE = Pattern.compile("(?m)^package ([\\w.]+);");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (static )?(org\\.straddle\\.[\\w.]+)\\.[\\w*]+;");

    /** The generated code of the model is what the framework makes of it. */
    private static final List<String> GENERATED = List.of("model", "model.edit");

    @Test
    void noPackageKnowsOneThatKnowsIt() {
        assertEquals(List.of(), circles(imports()));
    }

    /** What others name stands by itself; the way of bird and Earth on it; what others ask on both. */
    @Test
    void theRoomsOfTheSkyStandOnOneAnother() {
        SortedMap<String, SortedSet<String>> all = imports();
        String values = "org.straddle.sky";
        String track = "org.straddle.sky.track";
        String prediction = "org.straddle.sky.prediction";
        Set<String> rooms = Set.of(values, track, prediction);
        Map<String, Set<String>> known = new HashMap<>();
        rooms.forEach(room -> known.put(room, all.get(room).stream().filter(rooms::contains).collect(Collectors.toSet())));
        assertEquals(Map.of(values, Set.of(), track, Set.of(values), prediction, Set.of(values, track)), known);
    }

    @Test
    void aCircleIsFound() {
        assertEquals(List.of(List.of("a", "b", "c")), circles(Map.of("a", new TreeSet<>(List.of("b")),
                "b", new TreeSet<>(List.of("c", "d")), "c", new TreeSet<>(List.of("a")), "d", new TreeSet<>())));
    }

    @Test
    void theScanSeesPackages() {
        SortedMap<String, SortedSet<String>> all = imports();
        assertTrue(all.get("org.straddle.outlook.itinerary").contains("org.straddle.outlook"), all::toString);
    }

    /** Which package imports from which. */
    private static SortedMap<String, SortedSet<String>> imports() {
        SortedMap<String, SortedSet<String>> all = new TreeMap<>();
        for (String bundle : SourceTree.shipped()) {
            if (!GENERATED.contains(bundle)) {
                SourceTree.sources(bundle).forEach(file -> read(file, all));
            }
        }
        all.values().forEach(known -> known.retainAll(all.keySet()));
        return all;
    }

    private static void read(Path file, Map<String, SortedSet<String>> all) {
        String text = SourceTree.text(file);
        Matcher own = PACKAGE.matcher(text);
        if (!own.find()) {
            return;
        }
        SortedSet<String> known = all.computeIfAbsent(own.group(1), any -> new TreeSet<>());
        Matcher line = IMPORT.matcher(text);
        while (line.find()) {
            String from = line.group(2);
            // A static import and that of a class in a class name the class before the last dot.
            while (Character.isUpperCase(from.charAt(from.lastIndexOf('.') + 1))) {
                from = from.substring(0, from.lastIndexOf('.'));
            }
            if (!from.equals(own.group(1))) {
                known.add(from);
            }
        }
    }

    private static List<List<String>> circles(Map<String, SortedSet<String>> graph) {
        return new Circles(graph).found();
    }

    private static final class Circles {

        private final Map<String, SortedSet<String>> graph;
        private final Map<String, Integer> number = new HashMap<>();
        private final Map<String, Integer> low = new HashMap<>();
        private final Deque<String> open = new ArrayDeque<>();
        private final List<List<String>> found = new ArrayList<>();

        Circles(Map<String, SortedSet<String>> graph) {
            this.graph = graph;
        }

        List<List<String>> found() {
            new TreeSet<>(graph.keySet()).stream().filter(name -> !number.containsKey(name)).forEach(this::visit);
            return found;
        }

        private void visit(String name) {
            number.put(name, number.size());
            low.put(name, number.get(name));
            open.push(name);
            for (String next : graph.get(name)) {
                if (!number.containsKey(next)) {
                    visit(next);
                    low.merge(name, low.get(next), Math::min);
                } else if (open.contains(next)) {
                    low.merge(name, number.get(next), Math::min);
                }
            }
            if (low.get(name).equals(number.get(name))) {
                SortedSet<String> together = new TreeSet<>();
                while (!together.contains(name)) {
                    together.add(open.pop());
                }
                if (together.size() > 1) {
                    found.add(List.copyOf(together));
                }
            }
        }
    }
}
