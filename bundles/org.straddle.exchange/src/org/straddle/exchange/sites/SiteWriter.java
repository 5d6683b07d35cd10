package org.straddle.exchange.sites;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import org.apache.commons.csv.CSVFormat;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.GpxText;
import org.straddle.exchange.Waypoint;
import org.straddle.exchange.maps.WaypointWriter;
import org.straddle.model.Site;

/**
 * Sites as text in UTF-8 for spreadsheets, receivers and maps. {@link SourceTable} and {@link SiteMapping#guess} read
 * each back as it was, but GPX has no place for ids and errors.
 */
public final class SiteWriter {

    /** Formats in which sites go out. */
    public enum Format {
        CSV, GPX, GEOJSON;

        /** Of a file's name, with its dot. */
        public String extension() {
            return "." + name().toLowerCase(Locale.ROOT);
        }
    }

    private static final String[] COLUMNS =
            {"id", "name", "latitudeDeg", "longitudeDeg", "altitudeM", "markErrorM", "kind", "squares"};

    private SiteWriter() {
    }

    /** @throws IllegalArgumentException naming a site that is nowhere on Earth, which only CSV can carry */
    public static String write(Collection<Site> sites, Format format) {
        if (format == Format.CSV) {
            return csv(sites);
        }
        List<Waypoint> waypoints = sites.stream().map(Waypoint::of).toList();
        return format == Format.GPX ? WaypointWriter.gpx(waypoints) : WaypointWriter.geoJson(waypoints);
    }

    /** RFC 4180, with all digits that are needed to read the same values back. */
    private static String csv(Collection<Site> sites) {
        StringBuilder text = new StringBuilder();
        try {
            CSVFormat.RFC4180.builder().setHeader(COLUMNS).get().print(text);
            for (Site site : sites) {
                CSVFormat.RFC4180.printRecord(text, text(site.getId()), text(site.getName()), plain(site.getLatitudeDeg()), plain(site.getLongitudeDeg()),
                        plain(site.getAltitudeM()), plain(site.getMarkErrorM()), site.getKind() == null ? "" : site.getKind().getLiteral(),
                        text(String.join(" ", site.getSquares())));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String text(String value) {
        return value == null ? "" : CsvCell.of(value);
    }

    private static String plain(double value) {
        return Double.isFinite(value) ? GpxText.plain(value) : "";
    }
}
