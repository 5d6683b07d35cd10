package org.straddle.architecture;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** A file of texts of a catalogue as it lies in the source tree. */
record TextFile(Path file, String catalogue, Map<String, String> texts, List<String> twice) {

    /** The English files of a bundle; those of other languages end in an underscore and the language. */
    static List<TextFile> of(String bundle) {
        Path source = SourceTree.root().resolve("bundles/org.straddle." + bundle + "/src");
        List<TextFile> files = new ArrayList<>();
        for (Path file : SourceTree.files(source, ".properties")) {
            String name = file.getFileName().toString().replace(".properties", "");
            if (!name.contains("_")) {
                files.add(read(file, source.relativize(file.getParent()).toString().replace('/', '.') + "/" + name));
            }
        }
        return files;
    }

    private static TextFile read(Path file, String catalogue) {
        List<String> twice = new ArrayList<>();
        Properties noting = new Properties() {

            @Override
            public synchronized Object put(Object key, Object value) {
                if (containsKey(key)) {
                    twice.add(key.toString());
                }
                return super.put(key, value);
            }
        };
        try {
            noting.load(new StringReader(SourceTree.text(file)));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        Map<String, String> texts = new TreeMap<>();
        noting.forEach((key, value) -> texts.put(key.toString(), value.toString()));
        return new TextFile(file, catalogue, texts, twice);
    }
}
