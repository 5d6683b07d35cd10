package org.straddle.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** An archive whose bytes follow from its files alone: sorted by name, all of one time. */
final class Zip {

    private Zip() {
    }

    static void write(Path folder, Path archive, long time) throws IOException {
        LocalDateTime at = LocalDateTime.ofEpochSecond(time / 1000, 0, ZoneOffset.UTC);
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
            // Most of it is compressed already: higher levels take a third longer and save a hundredth.
            zip.setLevel(3);
            for (Path file : files) {
                ZipEntry entry = new ZipEntry(folder.relativize(file).toString().replace('\\', '/'));
                entry.setTimeLocal(at);
                zip.putNextEntry(entry);
                Files.copy(file, zip);
            }
        }
    }
}
