package org.straddle.exchange.elements;

import java.util.Locale;
import java.util.Optional;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.EarthOrientation;
import org.straddle.sky.prediction.EarthOrientationException;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

/**
 * A file of Earth orientation that was read as a whole: {@code finals2000A} in columns, or {@code eopc04}, as the IERS
 * publishes them. What kind it is shows in the rows; names and extensions lie.
 *
 * @param kind {@link EarthOrientation#FINALS} or {@link EarthOrientation#C04}
 */
public record OrientationFile(SourceFile source, String kind, EarthOrientation orientation) {

    private static final Catalogue TEXTS = Catalogue.of(OrientationFile.class);

    /** Empty when the content looks like something else. @throws ReadException when it looks like one and is damaged */
    static Optional<OrientationFile> read(SourceFile source) throws ReadException {
        byte[] bytes = source.bytes();
        Optional<String> kind = EarthOrientation.kind(bytes);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new OrientationFile(source, kind.get(), EarthOrientation.read(source.name(), bytes)));
        } catch (EarthOrientationException e) {
            throw new ReadException(source.name(), 0, TEXTS.text("orientationFile.looksLikeBut", "kind", kind.get(),
                    "reason", e.reason()), EarthOrientationException.WHAT_TO_DO, e);
        }
    }

    /**
     * Copies the untouched file into the event's elements folder, at once and as a whole. From then on it is the one
     * that passes rest on. One of the same name is replaced.
     *
     * @return what was done, a sentence for the user
     */
    public String keepIn(EventFolder folder) throws EventFolderException {
        String name = folder.putElementsFile(publishedName(), source.bytes());
        Window days = orientation.coverage().orElseThrow();
        return TEXTS.text("orientationFile.earthOrientationFrom", "date", date(days.start().toString()),
                "date2", date(days.end().toString()), "name", name);
    }

    /** By such a name it is found among the element sets. */
    private String publishedName() {
        return source.name().toLowerCase(Locale.ROOT).startsWith(kind.toLowerCase(Locale.ROOT)) ? source.name()
                : kind + "-" + source.name();
    }

    private static String date(String instant) {
        return instant.substring(0, 10);
    }
}
