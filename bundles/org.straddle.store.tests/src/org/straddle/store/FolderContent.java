package org.straddle.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a user would see in a folder: names and contents of all files that are not hidden. */
final class FolderContent {

    private FolderContent() {
    }

    static Map<String, String> of(Path folder) {
        Map<String, String> content = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (!name.startsWith(".")) {
                    content.put(name, Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return content;
    }

    static List<String> names(Path folder) {
        return List.copyOf(of(folder).keySet());
    }
}
