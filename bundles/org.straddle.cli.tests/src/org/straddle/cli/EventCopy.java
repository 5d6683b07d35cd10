package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Events for tests to change: the command line makes the demo once for all of them, and copies take no time. */
final class EventCopy {

    private static Map<String, byte[]> demo;

    private EventCopy() {
    }

    /** @param to does not exist yet */
    static Path ofDemo(Path to) throws IOException {
        return write(demo(), to);
    }

    /** @param to does not exist yet */
    static Path of(Path event, Path to) throws IOException {
        return write(read(event), to);
    }

    private static synchronized Map<String, byte[]> demo() throws IOException {
        if (demo == null) {
            Path made = Files.createTempDirectory("straddle-demo");
            try {
                assertEquals(0, Console.run("demo", made).code());
                demo = read(made);
            } finally {
                delete(made);
            }
        }
        return demo;
    }

    private static Map<String, byte[]> read(Path event) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(event)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(event.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    private static Path write(Map<String, byte[]> files, Path to) throws IOException {
        Files.createDirectory(to);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path copy = to.resolve(file.getKey());
            Files.createDirectories(copy.getParent());
            Files.write(copy, file.getValue());
        }
        return to;
    }

    private static void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path each, IOException failure) throws IOException {
                Files.delete(each);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
