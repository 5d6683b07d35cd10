package org.straddle.packaging;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The jars that the command line needs, found by following its bundles' manifests, in the order of a class path that
 * does without the framework.
 */
final class ClassPath {

    private static final String COMMAND_LINE = "org.straddle.cli";

    /** Holds old copies of EMF, Jackson, picocli and slf4j: whoever looks for those must meet the new ones first. */
    private static final String LAST = "geotools";

    /** Asked for by reflection or by services, so no manifest that is followed names them. */
    private static final Set<String> BESIDES = Set.of("slf4j.jdk14", "com.google.protobuf", "com.google.ortools", "com.sun.jna",
            "com.sun.jna.platform", "com.adobe.xmp.xmpcore");

    private final Map<String, Plugin> byName = new HashMap<>();
    private final Map<String, List<Plugin>> byPackage = new HashMap<>();

    private ClassPath(List<Plugin> plugins) {
        for (Plugin plugin : plugins) {
            byName.put(plugin.name(), plugin);
            for (String exported : plugin.names("Export-Package")) {
                byPackage.computeIfAbsent(exported, key -> new ArrayList<>()).add(plugin);
            }
        }
    }

    static List<Plugin> of(List<Plugin> plugins) {
        return new ClassPath(plugins).ordered();
    }

    private List<Plugin> ordered() {
        Set<Plugin> found = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(COMMAND_LINE));
        open.addAll(BESIDES);
        while (!open.isEmpty()) {
            Plugin plugin = byName.get(open.remove());
            if (plugin == null || !plugin.isJar() || !found.add(plugin)) {
                continue;
            }
            open.addAll(plugin.names("Require-Bundle"));
            for (String imported : plugin.names("Import-Package")) {
                byPackage.getOrDefault(imported, List.of()).forEach(exporter -> {
                    if (!exporter.name().equals(LAST)) {
                        open.add(exporter.name());
                    }
                });
            }
        }
        List<Plugin> jars = new ArrayList<>(found);
        jars.removeIf(plugin -> plugin.name().startsWith("org.eclipse.swt") || plugin.name().startsWith("org.straddle.ui"));
        jars.sort(Comparator.comparing((Plugin plugin) -> plugin.name().equals(LAST)).thenComparing(plugin -> !plugin.isOurs())
                .thenComparing(Plugin::name));
        return jars;
    }
}
