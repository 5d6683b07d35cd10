package org.straddle.exchange.sites;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.apache.commons.csv.CSVFormat;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.GpxText;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.Waypoint;
import org.straddle.exchange.maps.WaypointWriter;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.words.Catalogue;

/**
 * Sites as text in UTF-8 for spreadsheets, receivers and maps. {@link SourceTable} and {@link SiteMapping#guess} read
 * each back as it was, but GPX has no place for ids and errors.
 */
public final class SiteWriter {

    private static final Catalogue TEXTS = Catalogue.of(SiteWriter.class);

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

    private static final String REFUSED = TEXTS.text("siteWriter.nothingWrittenBecause");
    private static final int MOST_SHOWN = 40;

    private SiteWriter() {
    }

    /**
     * @throws IllegalArgumentException with a sentence for the user, naming the site, if there is one that
     *     {@link SiteImport} would refuse: one that is nowhere on Earth, or with a name too long
     */
    public static String write(Collection<Site> sites, Format format) {
        String text = text(sites, format);
        try {
            SourceTable table = read(text, format);
            SiteMapping mapping = SiteMapping.guess(table);
            Iterator<Site> each = sites.iterator();
            for (SourceTable.Row row : table.rows()) {
                Site site = each.next();
                try {
                    SiteValues.read(table, row, mapping, CoordinateOrder.OF_THE_FORMAT);
                } catch (SiteValues.Refusal e) {
                    throw refused(site, e.getMessage());
                }
            }
        } catch (ReadException e) {
            for (Site site : sites) {
                requireReadable(site, format);
            }
            throw new IllegalArgumentException(REFUSED + e.what() + "\n" + e.whatToDo());
        }
        return text;
    }

    private static SourceTable read(String text, Format format) throws ReadException {
        return SourceTable.read("sites" + format.extension(), text.getBytes(StandardCharsets.UTF_8));
    }

    private static void requireReadable(Site site, Format format) {
        try {
            read(text(List.of(site), format), format);
        } catch (ReadException e) {
            throw refused(site, e.what().replaceFirst("\\.$", ""));
        }
    }

    private static IllegalArgumentException refused(Site site, String why) {
        String name = InertText.line(Objects.toString(site.getName(), ""));
        return new IllegalArgumentException(TEXTS.text("siteWriter.site", "name", name.length() > MOST_SHOWN
                ? name.substring(0, MOST_SHOWN) + "…" : name, "why", why));
    }

    private static String text(Collection<Site> sites, Format format) {
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
