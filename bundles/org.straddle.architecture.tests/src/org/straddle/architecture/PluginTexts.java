package org.straddle.architecture;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The texts of a bundle's {@code plugin.xml}: {@code %key} there, the text in {@code plugin.properties}. */
final class PluginTexts {

    private static final Pattern KEY = Pattern.compile("[\">]%([\\w.\\-]+)[\"<]");

    private PluginTexts() {
    }

    static List<String> faults(String bundle) {
        Path folder = SourceTree.root().resolve("bundles/org.straddle." + bundle);
        Path texts = folder.resolve("plugin.properties");
        if (!Files.exists(folder.resolve("plugin.xml")) || bundle.startsWith("model")) {
            return List.of();
        }
        Set<String> used = new TreeSet<>();
        Matcher key = KEY.matcher(SourceTree.text(folder.resolve("plugin.xml")));
        while (key.find()) {
            used.add(key.group(1));
        }
        Set<String> known = new TreeSet<>();
        if (Files.exists(texts)) {
            Properties properties = new Properties();
            try {
                properties.load(new StringReader(SourceTree.text(texts)));
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
            known.addAll(properties.stringPropertyNames());
        }
        List<String> faults = new ArrayList<>();
        used.stream().filter(name -> !known.contains(name)).forEach(name -> faults.add(bundle + ": there is no text " + name));
        known.stream().filter(name -> !used.contains(name)).forEach(name -> faults.add(bundle + ": nobody says " + name));
        return faults;
    }
}
