package org.straddle.exchange.formats;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;

/** What a file that somebody wants to bring in seems to be, by how it begins; the reader of that kind then judges it. */
public enum FileKind {

    /** Points that may be sites: CSV, GPX or GeoJSON. */
    SITES,
    /** Element sets, Earth orientation, or nothing that is known. */
    SKY;

    private static final int LOOK_AT_BYTES = 1 << 16;
    private static final Pattern GPX = Pattern.compile("<(\\w+:)?gpx\\b");
    private static final Pattern GEOJSON = Pattern.compile("\"(FeatureCollection|Feature|geometry|coordinates)\"");
    private static final Pattern ELEMENT_WORDS = Pattern.compile("(?i)MEAN_MOTION|NORAD_CAT_ID|CCSDS_OMM_VERS|(?m)^[12] [ \\dA-Z]{5}");

    /** @throws ReadException when the file is not there or cannot be read */
    public static FileKind of(Path path) throws ReadException {
        MapSource source = MapSource.of(path, "Choose a file that is there.");
        try (InputStream in = Files.newInputStream(path)) {
            return of(new String(in.readNBytes(LOOK_AT_BYTES), StandardCharsets.UTF_8).replace("\uFEFF", ""));
        } catch (IOException e) {
            throw MapSource.unreadable(source.name(), e);
        }
    }

    private static FileKind of(String start) {
        String text = start.stripLeading();
        if (text.startsWith("<")) {
            return GPX.matcher(text).find() ? SITES : SKY;
        }
        if (text.startsWith("{") || text.startsWith("[")) {
            return GEOJSON.matcher(text).find() ? SITES : SKY;
        }
        String first = text.lines().findFirst().orElse("");
        boolean table = !first.startsWith("#") && first.matches(".*[,;\\t].*") && first.chars().noneMatch(c -> c < ' ' && c != '\t');
        return table && !ELEMENT_WORDS.matcher(text).find() ? SITES : SKY;
    }
}
