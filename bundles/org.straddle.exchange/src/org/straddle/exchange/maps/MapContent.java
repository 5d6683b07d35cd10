package org.straddle.exchange.maps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.MapSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.grid.Trace;
import org.straddle.words.Catalogue;

/** What has been read of a map so far: checks positions, and drops what is no line or area with a remark. */
final class MapContent {

    private static final Catalogue TEXTS = Catalogue.of(MapContent.class);

    /** 128 MB of memory, which fits beside everything else, and far more than a region has within reach of a rove. */
    static final int MOST_POSITIONS = 8_000_000;

    private static final double FARTHEST_DEG = 360;

    private final MapSource source;
    private final CoordinateOrder order;
    private final List<MapFeature> features = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private int unsaid;
    private int positions;

    MapContent(MapSource source, CoordinateOrder order) {
        this.source = source;
        this.order = order;
    }

    MapFile toFile(FileFormat format) throws ReadException {
        if (features.isEmpty()) {
            throw source.refuse(0, TEXTS.text("mapContent.fileHoldsPoints", "remarks", remarks.isEmpty() ? ""
                    : TEXTS.text("mapContent.firstReason",
                    "remarks", remarks.get(0))), TEXTS.text("mapContent.chooseFileRoads"));
        }
        if (unsaid > 0) {
            remarks.add(TEXTS.text("mapContent.moreRemarksKind", "unsaid", unsaid));
        }
        return new MapFile(source.name(), format, features, remarks);
    }

    void remark(int line, String sentence) {
        if (remarks.size() < MapFile.MOST_REMARKS) {
            remarks.add(TEXTS.text("mapContent.line", "line", line, "sentence", sentence));
        } else {
            unsaid++;
        }
    }

    /** Adds a position as the file gives it. */
    void position(Trace.Builder trace, double latitude, double longitude, double largestLongitude, int line) throws ReadException {
        boolean swap = order == CoordinateOrder.SWAPPED;
        double latitudeDeg = swap ? longitude : latitude;
        double longitudeDeg = swap ? latitude : longitude;
        checkPosition(source, latitudeDeg, longitudeDeg, largestLongitude, line);
        weigh(1, line);
        trace.add(latitudeDeg, longitudeDeg);
    }

    /** @throws ReadException when the position is nowhere on Earth, caused by a {@link CoordinateOutOfRange} */
    static void checkPosition(MapSource source, double latitudeDeg, double longitudeDeg, double largestLongitude, int line)
            throws ReadException {
        // So written that a value which is no number fails.
        if (!(Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= largestLongitude)) {
            throw outOfRange(source, latitudeDeg, longitudeDeg, largestLongitude, line);
        }
    }

    /** Counts positions, or things that take as much memory, so that many small ones do not slip through. */
    void weigh(int more, int line) throws ReadException {
        positions += more;
        if (positions > MOST_POSITIONS) {
            throw source.refuse(line, TEXTS.text("mapContent.fileHasToo", "mostPositions", MOST_POSITIONS / 1_000_000),
                    TEXTS.text("mapContent.cutRegionEvent"));
        }
    }

    private static ReadException outOfRange(MapSource source, double latitudeDeg, double longitudeDeg, double largestLongitude, int line) {
        boolean badLatitude = !(Math.abs(latitudeDeg) <= 90);
        String what = badLatitude ? TEXTS.text("mapContent.latitudeNotBetween", "latitudeDeg", latitudeDeg)
                : TEXTS.text("mapContent.longitudeNotBetween", "longitudeDeg", longitudeDeg);
        boolean fitsSwapped = Math.abs(longitudeDeg) <= 90 && Math.abs(latitudeDeg) <= Math.min(180, largestLongitude);
        boolean inMetres = Math.abs(latitudeDeg) > FARTHEST_DEG || Math.abs(longitudeDeg) > FARTHEST_DEG;
        String whatToDo = fitsSwapped
                ? TEXTS.text("mapContent.latitudeLongitudeSeem")
                : inMetres ? TEXTS.text("mapContent.theseSeemMetres")
                        : TEXTS.text("mapContent.positionsMustWgs");
        return new ReadException(source.name(), line, what, whatToDo, new CoordinateOutOfRange(what, fitsSwapped));
    }

    void points(String name, Optional<MapRole> role, List<Trace> parts) {
        List<Trace> filled = parts.stream().filter(part -> part.size() > 0).toList();
        if (!filled.isEmpty()) {
            features.add(new MapFeature(name, role, MapFeature.Shape.POINTS, filled));
        }
    }

    void lines(String name, Optional<MapRole> role, List<Trace> parts, int line) {
        List<Trace> kept = new ArrayList<>();
        for (Trace part : parts) {
            if (part.size() < 2) {
                remark(line, TEXTS.text("mapContent.hasCaseLeft", "name", named(TEXTS.text("mapContent.ofLine"), name),
                        "case", part.size() == 0));
            } else if (stands(part)) {
                remark(line, TEXTS.text("mapContent.hasLengthLeft", "name", named(TEXTS.text("mapContent.ofLine"), name)));
            } else {
                kept.add(part);
            }
        }
        if (parts.isEmpty()) {
            remark(line, TEXTS.text("mapContent.emptyLeftOut", "name", named(TEXTS.text("mapContent.ofLine"), name)));
        }
        if (!kept.isEmpty()) {
            features.add(new MapFeature(name, role, MapFeature.Shape.LINES, kept));
        }
    }

    void area(String name, Optional<MapRole> role, List<Trace> rings, int line) {
        List<Trace> kept = new ArrayList<>();
        for (Trace ring : rings) {
            if (ring.size() < 3 || stands(ring)) {
                remark(line, TEXTS.text("mapContent.hasRingLess", "name", named(TEXTS.text("mapContent.area"), name)));
                continue;
            }
            if (!ring.position(0).equals(ring.position(ring.size() - 1))) {
                remark(line, TEXTS.text("mapContent.hasRingNot", "name", named(TEXTS.text("mapContent.area"), name)));
                ring = closed(ring);
            }
            kept.add(ring);
        }
        if (rings.isEmpty()) {
            remark(line, TEXTS.text("mapContent.emptyLeftOut", "name", named(TEXTS.text("mapContent.area"), name)));
        }
        if (!kept.isEmpty()) {
            features.add(new MapFeature(name, role, MapFeature.Shape.AREA, kept));
        }
    }

    private static String named(String thing, String name) {
        return name.isEmpty() ? thing : thing + " (" + name + ")";
    }

    private static boolean stands(Trace trace) {
        for (int i = 1; i < trace.size(); i++) {
            if (trace.latitudeDeg(i) != trace.latitudeDeg(0) || trace.longitudeDeg(i) != trace.longitudeDeg(0)) {
                return false;
            }
        }
        return true;
    }

    private static Trace closed(Trace ring) {
        Trace.Builder all = new Trace.Builder();
        for (int i = 0; i <= ring.size(); i++) {
            all.add(ring.latitudeDeg(i % ring.size()), ring.longitudeDeg(i % ring.size()));
        }
        return all.build();
    }

    /**
     * Edges as RFC 7946 section 3.1.1 has them, straight in longitude and latitude, for a {@link Trace}, whose edges
     * are geodesics. Up to a kilometre the two are the same but for 2 cm × tan φ, so longer ones get positions between.
     * An edge of more than half the Earth is taken to go the short way.
     */
    Trace straightInDegrees(Trace trace, int line) throws ReadException {
        Trace.Builder filled = null;
        for (int i = 0; i < trace.size(); i++) {
            int pieces = i == 0 ? 1 : pieces(trace, i - 1);
            if (pieces > 1 && filled == null) {
                filled = new Trace.Builder();
                for (int before = 0; before < i; before++) {
                    filled.add(trace.latitudeDeg(before), trace.longitudeDeg(before));
                }
            }
            if (filled == null) {
                continue;
            }
            weigh(pieces - 1, line);
            for (int piece = 1; piece < pieces; piece++) {
                double part = (double) piece / pieces;
                double east = Math.IEEEremainder(trace.longitudeDeg(i) - trace.longitudeDeg(i - 1), 360);
                filled.add(trace.latitudeDeg(i - 1) + part * (trace.latitudeDeg(i) - trace.latitudeDeg(i - 1)),
                        trace.longitudeDeg(i - 1) + part * east);
            }
            filled.add(trace.latitudeDeg(i), trace.longitudeDeg(i));
        }
        return filled == null ? trace : filled.build();
    }

    private static int pieces(Trace trace, int edge) {
        double kmPerDegree = 111.4;
        double north = trace.latitudeDeg(edge + 1) - trace.latitudeDeg(edge);
        double east = Math.IEEEremainder(trace.longitudeDeg(edge + 1) - trace.longitudeDeg(edge), 360);
        // Due north or south both are the same.
        if (east == 0) {
            return 1;
        }
        double cosine = Math.cos(Math.toRadians(Math.min(Math.abs(trace.latitudeDeg(edge)), Math.abs(trace.latitudeDeg(edge + 1)))));
        return Math.max(1, (int) Math.ceil(kmPerDegree * Math.hypot(north, east * cosine)));
    }
}
