package org.straddle.grid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.sf.geographiclib.GeodesicLine;

/** Follows one road, edge by edge, and keeps the stretches near a line or corner that it is on. */
final class RoadScout {

    /** A longer edge, in degrees of longitude, is looked at in halves, so that few lines and corners are in question. */
    private static final double WIDEST_DEG = 2;

    /**
     * How far a geodesic bulges beyond the latitudes of its ends, in degrees for a square degree of longitude
     * between them: sin 2φ Δλ²/16 on a sphere, and a tenth more.
     */
    private static final double BULGE = 1.1 * Math.PI / 180 / 16;

    private static final double LEAST_DEGREE_OF_LATITUDE_M = 110_570;
    private static final double LEAST_DEGREE_OF_EQUATOR_M = 111_310;
    private static final double NEAREST_TO_POLE_DEG = 89.5;

    private final MapFeature road;
    private final Trace trace;
    private final ScoutReach reach;
    private final List<Candidate> found;
    private Map<Boundary, RoadStretch> open = new LinkedHashMap<>();

    RoadScout(MapFeature road, Trace trace, ScoutReach reach, List<Candidate> found) {
        this.road = road;
        this.trace = trace;
        this.reach = reach;
        this.found = found;
    }

    /** To be called for every edge in order. */
    void look(int edge) {
        look(trace.latitudeDeg(edge), trace.longitudeDeg(edge), trace.latitudeDeg(edge + 1), trace.longitudeDeg(edge + 1));
    }

    private void look(double fromLatitude, double fromLongitude, double toLatitude, double endLongitude) {
        double toLongitude = fromLongitude + Math.IEEEremainder(endLongitude - fromLongitude, 360);
        double wide = Math.abs(toLongitude - fromLongitude);
        if (Math.min(Math.abs(fromLatitude), Math.abs(toLatitude)) > NEAREST_TO_POLE_DEG) {
            end();
            return;
        }
        if (wide > WIDEST_DEG) {
            Geodesic way = Geodesic.between(new GeoPosition(fromLatitude, fromLongitude), new GeoPosition(toLatitude, toLongitude));
            GeoPosition middle = way.pointAt(way.distanceM() / 2);
            look(fromLatitude, fromLongitude, middle.latitudeDeg(), middle.longitudeDeg());
            look(middle.latitudeDeg(), middle.longitudeDeg(), toLatitude, endLongitude);
            return;
        }
        double bulge = BULGE * wide * wide + 1e-9;
        double south = Math.min(fromLatitude, toLatitude) - bulge;
        double north = Math.max(fromLatitude, toLatitude) + bulge;
        double west = Math.min(fromLongitude, toLongitude);
        double east = Math.max(fromLongitude, toLongitude);
        double farthest = Math.min(NEAREST_TO_POLE_DEG, Math.max(Math.abs(south), Math.abs(north)));
        double oneDegreeEastM = LEAST_DEGREE_OF_EQUATOR_M * Math.cos(Math.toRadians(farthest));
        double halfM = reach.halfSpanM();
        double cornerM = reach.cornerReachM();
        // Corners are looked for at least as far away as lines.
        int firstRow = Math.max(-89, (int) Math.ceil(south - cornerM / LEAST_DEGREE_OF_LATITUDE_M));
        int lastRow = Math.min(89, (int) Math.floor(north + cornerM / LEAST_DEGREE_OF_LATITUDE_M));
        int firstColumn = (int) Math.ceil((west - cornerM / oneDegreeEastM) / 2);
        int lastColumn = (int) Math.floor((east + cornerM / oneDegreeEastM) / 2);
        if (firstRow > lastRow && firstColumn > lastColumn) {
            end();
            return;
        }
        List<GridLine> lines = new ArrayList<>();
        List<GridCorner> corners = new ArrayList<>();
        for (int row = firstRow; row <= lastRow; row++) {
            if (row >= south - halfM / LEAST_DEGREE_OF_LATITUDE_M && row <= north + halfM / LEAST_DEGREE_OF_LATITUDE_M) {
                lines.add(GridLine.parallel(row));
            }
            for (int column = firstColumn; column <= lastColumn; column++) {
                corners.add(new GridCorner(row, longitude(column)));
            }
        }
        for (int column = firstColumn; column <= lastColumn; column++) {
            if (2 * column >= west - halfM / oneDegreeEastM && 2 * column <= east + halfM / oneDegreeEastM) {
                lines.add(GridLine.meridian(longitude(column)));
            }
        }
        if (lines.isEmpty() && corners.isEmpty()) {
            end();
            return;
        }
        measure(Geodesic.between(new GeoPosition(fromLatitude, fromLongitude), new GeoPosition(toLatitude, endLongitude)), lines,
                corners);
    }

    private static int longitude(int column) {
        return Math.floorMod(2 * column + 180, 360) - 180;
    }

    private void measure(Geodesic way, List<GridLine> lines, List<GridCorner> corners) {
        if (way.distanceM() == 0) {
            return;
        }
        GeodesicLine line = way.line();
        Map<Boundary, RoadStretch> stillOpen = new LinkedHashMap<>();
        List<Crossing> crossings = lines.isEmpty() ? List.of() : Crossings.of(List.of(way.from(), way.to()));
        for (GridLine boundary : lines) {
            List<Crossing> left = new ArrayList<>(crossings);
            left.removeIf(c -> !meets(c.boundary(), boundary));
            for (LineBand band : LineBand.on(line, way.distanceM(), boundary, reach.halfSpanM())) {
                RoadStretch stretch = stretch(boundary, band.fromM() <= 0);
                stretch.add(line, band.nearestM(), band.distanceM(), band.toM() - band.fromM());
                left.removeIf(c -> stretch.addIfWithin(c, band));
                keep(stillOpen, stretch, band.toM() >= way.distanceM());
            }
            // Only rounding can leave a crossing outside every band.
            for (Crossing crossing : left) {
                RoadStretch stretch = new RoadStretch(boundary);
                stretch.add(crossing);
                stretch.report(road, found);
            }
        }
        for (GridCorner corner : corners) {
            passCorner(way, line, corner, stillOpen);
        }
        end();
        open = stillOpen;
    }

    private static boolean meets(Boundary crossed, GridLine line) {
        return crossed instanceof GridCorner corner ? corner.parallel().equals(line) || corner.meridian().equals(line)
                : crossed.equals(line);
    }

    private void passCorner(Geodesic way, GeodesicLine line, GridCorner corner, Map<Boundary, RoadStretch> stillOpen) {
        EdgeFoot nearest = EdgeFoot.onEdge(line, way.distanceM(), corner.position());
        if (nearest.distanceM() > reach.cornerReachM()) {
            return;
        }
        EdgeFoot foot = EdgeFoot.of(line, corner.position());
        double[] within = chord(foot, reach.cornerReachM(), way.distanceM());
        double[] straddling = chord(foot, reach.halfSpanM(), way.distanceM());
        RoadStretch stretch = stretch(corner, within[0] <= 0);
        stretch.add(line, nearest.alongM(), nearest.distanceM(), straddling[1] - straddling[0]);
        keep(stillOpen, stretch, within[1] >= way.distanceM());
    }

    /** The part of an edge within a distance of a point, flat: at 10 km the Earth's curve makes 4 mm. */
    private static double[] chord(EdgeFoot foot, double distanceM, double lengthM) {
        double square = distanceM * distanceM - foot.distanceM() * foot.distanceM();
        if (square <= 0) {
            return new double[] {foot.alongM(), foot.alongM()};
        }
        double half = Math.sqrt(square);
        double from = Math.min(lengthM, Math.max(0, foot.alongM() - half));
        return new double[] {from, Math.max(from, Math.min(lengthM, foot.alongM() + half))};
    }

    private RoadStretch stretch(Boundary boundary, boolean fromStart) {
        RoadStretch before = fromStart ? open.remove(boundary) : null;
        return before == null ? new RoadStretch(boundary) : before;
    }

    private void keep(Map<Boundary, RoadStretch> stillOpen, RoadStretch stretch, boolean toEnd) {
        if (toEnd) {
            stillOpen.put(stretch.boundary(), stretch);
        } else {
            stretch.report(road, found);
        }
    }

    /** Reports what the road has left behind. */
    void end() {
        if (!open.isEmpty()) {
            open.values().forEach(stretch -> stretch.report(road, found));
            open.clear();
        }
    }
}
