package org.straddle.outlook;

import java.io.IOException;
import java.io.InputStream;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;

import org.straddle.sky.prediction.EarthOrientation;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.store.KeptFile;
import org.straddle.store.KeptFolder;
import org.straddle.words.Catalogue;

/**
 * The search that an event's passes are found by: with the Earth orientation file that lies among its element sets
 * under the name it is published by the IERS ({@code finals2000A…} or {@code eopc04…}), or without any. The search of
 * the same file is kept, because it remembers the passes that it found.
 */
public final class EarthSearch {

    private static final Catalogue TEXTS = Catalogue.of(EarthSearch.class);

    private static final Pattern PUBLISHED_NAME = Pattern.compile("(?i)(finals2000A|eopc04)[^/]*");

    /** All days since 1962 in every column come to 5 MB. */
    private static final int LARGEST_BYTES = 20 << 20;
    private static final String TAKE_IT_OUT = TEXTS.text("earthSearch.takeOut");

    private record Known(KeptFile file, PassSearch search) {
    }

    private static Known last;

    private EarthSearch() {
    }

    /**
     * @param elements of the event
     * @throws IOException when such a file is there and cannot be used; the message names it and says what to do
     */
    public static synchronized PassSearch in(KeptFolder elements) throws IOException {
        Optional<KeptFile> file = newest(elements);
        if (file.isEmpty()) {
            return Outlook.SHARED_SEARCH;
        }
        if (last == null || !last.file.equals(file.get())) {
            last = new Known(file.get(), new PassSearch(read(file.get())));
        }
        return last.search;
    }

    private static Optional<KeptFile> newest(KeptFolder elements) throws IOException {
        return elements.files().stream().filter(file -> PUBLISHED_NAME.matcher(file.name()).matches())
                .max(Comparator.comparing(KeptFile::modified).thenComparing(KeptFile::name));
    }

    private static EarthOrientation read(KeptFile file) throws IOException {
        if (file.size() > LARGEST_BYTES) {
            throw new IOException(TEXTS.text("earthSearch.largerThanMb", "file", file.name(),
                    "largestBytes", (LARGEST_BYTES >> 20), "takeItOut", TAKE_IT_OUT));
        }
        try (InputStream in = file.open()) {
            return EarthOrientation.read(file.name(), in.readNBytes(LARGEST_BYTES));
        } catch (IllegalArgumentException failure) {
            throw new IOException(failure.getMessage() + TAKE_IT_OUT, failure);
        }
    }
}
