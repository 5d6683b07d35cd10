package org.straddle.outlook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.straddle.sky.EarthOrientation;
import org.straddle.sky.PassSearch;

/**
 * The search that an event's passes are found by: with the Earth orientation file that lies among its element sets
 * under the name it is published by the IERS ({@code finals2000A…} or {@code eopc04…}), or without any. The search of
 * the same file is kept, because it remembers the passes that it found.
 */
public final class EarthSearch {

    private static final Pattern PUBLISHED_NAME = Pattern.compile("(?i)(finals2000A|eopc04).*");

    private record Known(Path file, FileTime modified, long size, PassSearch search) {
    }

    private static Known last;

    private EarthSearch() {
    }

    /**
     * @param elementsFolder of the event; need not exist
     * @throws IOException when such a file is there and cannot be used; the message names it and says what to do
     */
    public static synchronized PassSearch in(Path elementsFolder) throws IOException {
        Optional<Path> file = newest(elementsFolder);
        if (file.isEmpty()) {
            return Outlook.SHARED_SEARCH;
        }
        FileTime modified = Files.getLastModifiedTime(file.get());
        long size = Files.size(file.get());
        if (last == null || !last.file.equals(file.get()) || !last.modified.equals(modified) || last.size != size) {
            last = new Known(file.get(), modified, size, new PassSearch(read(file.get())));
        }
        return last.search;
    }

    private static Optional<Path> newest(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> PUBLISHED_NAME.matcher(file.getFileName().toString()).matches()
                    && Files.isRegularFile(file)).max(Comparator.comparing((Path file) -> file.toFile().lastModified())
                            .thenComparing(Comparator.naturalOrder()));
        }
    }

    private static EarthOrientation read(Path file) throws IOException {
        try {
            return EarthOrientation.read(file);
        } catch (IllegalArgumentException failure) {
            throw new IOException(failure.getMessage() + "\nTake it out of the elements folder, or put a whole one there.",
                    failure);
        }
    }
}
