package org.straddle.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoublePredicate;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;
import net.sf.geographiclib.GeodesicMask;

/**
 * The points where a track crosses from square to square, in order of travel.
 *
 * <p>The edges of a track are taken for geodesics, not for straight lines in latitude and longitude:
 * over 10 km eastward at 64° north the two lie 4 m apart, enough to argue a site wrongly.
 * Which lines an edge crosses is decided by whole squares of its ends and of its northernmost or
 * southernmost point, so an end exactly on a line is counted once, by the half-open rule of
 * {@link Square}, and a track that runs along a line without leaving its square does not cross it.
 * The points are found by halving, to {@link #EXACT_M}.
 *
 * <p>Weak where an edge passes over a pole: it then reports every meridian between at the pole.
 */
public final class Crossings {

    /** Along the track, in metres. */
    static final double EXACT_M = 1e-4;

    /** A track that crosses both lines this near to their corner, in metres, is taken to cross the corner. */
    static final double CORNER_M = 0.1;

    private final List<Crossing> found = new ArrayList<>();
    private double travelledM;

    private Crossings() {
    }

    /** @param track positions in order of travel; fewer than two have no crossing */
    public static List<Crossing> of(List<GeoPosition> track) {
        Crossings run = new Crossings();
        for (int edge = 0; edge + 1 < track.size(); edge++) {
            run.cross(edge, Geodesic.between(track.get(edge), track.get(edge + 1)));
        }
        return List.copyOf(run.found);
    }

    /** A single line met on an edge; the change is +1 or -1 of the column or the row. */
    private record Step(GridLine line, double alongM, int columns, int rows) {
    }

    private void cross(int edge, Geodesic way) {
        List<Step> steps = new ArrayList<>();
        if (way.distanceM() > 0) {
            GeodesicLine line = way.line();
            addMeridians(steps, line, way);
            addParallels(steps, line, way);
            steps.sort(Comparator.comparingDouble(Step::alongM));
        }
        int column = Square.columnOf(way.from());
        int row = Square.rowOf(way.from());
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Square left = Square.at(column, row);
            column += step.columns;
            row += step.rows;
            Boundary boundary = step.line;
            GeoPosition position = onLine(way, step);
            if (i + 1 < steps.size()) {
                Step next = steps.get(i + 1);
                GridCorner corner = sharedCorner(step, next, position, onLine(way, next));
                if (corner != null) {
                    column += next.columns;
                    row += next.rows;
                    boundary = corner;
                    position = corner.position();
                    i++;
                }
            }
            Square entered = Square.at(column, row);
            List<Square> squares = boundary instanceof GridCorner c ? c.squares() : neighbours(step, left, entered);
            found.add(new Crossing(boundary, position, travelledM + step.alongM,
                    Geodesic.bearing(way.line().Position(step.alongM).azi2), edge, left, entered, squares));
        }
        travelledM += way.distanceM();
    }

    /** West before east, south before north, as {@link GridLine#squaresAt} has it. */
    private static List<Square> neighbours(Step step, Square left, Square entered) {
        return step.columns + step.rows > 0 ? List.of(left, entered) : List.of(entered, left);
    }

    private static GeoPosition onLine(Geodesic way, Step step) {
        GeoPosition found = way.pointAt(step.alongM);
        return step.line.isMeridian() ? new GeoPosition(found.latitudeDeg(), step.line.degree())
                : new GeoPosition(step.line.degree(), found.longitudeDeg());
    }

    private static GridCorner sharedCorner(Step one, Step other, GeoPosition onOne, GeoPosition onOther) {
        if (one.line.kind() == other.line.kind()) {
            return null;
        }
        GridLine meridian = one.line.isMeridian() ? one.line : other.line;
        GridLine parallel = one.line.isMeridian() ? other.line : one.line;
        GridCorner corner = new GridCorner(parallel.degree(), meridian.degree());
        boolean near = Geodesic.distanceM(corner.position(), onOne) < CORNER_M
                && Geodesic.distanceM(corner.position(), onOther) < CORNER_M;
        return near ? corner : null;
    }

    /** Longitude only grows or only falls along a geodesic, so whole columns of the ends tell what is crossed. */
    private static void addMeridians(List<Step> steps, GeodesicLine line, Geodesic way) {
        double end = unrolledLongitude(line, way.distanceM());
        int turns = (int) Math.rint((end - way.to().longitudeDeg()) / 360);
        int from = Square.columnOf(way.from());
        int to = Square.columnOf(way.to()) + turns * Square.COLUMNS;
        int change = Integer.signum(to - from);
        for (int column = from; column != to; column += change) {
            int degree = 2 * (change > 0 ? column + 1 : column) - 180;
            double alongM = halve(0, way.distanceM(), s -> change * (unrolledLongitude(line, s) - degree) >= 0);
            steps.add(new Step(GridLine.meridian(Math.floorMod(degree + 180, 360) - 180), alongM, change, 0));
        }
    }

    private static double unrolledLongitude(GeodesicLine line, double alongM) {
        return line.Position(alongM, GeodesicMask.LONGITUDE | GeodesicMask.LONG_UNROLL).lon2;
    }

    /** Latitude may turn once, where the geodesic runs due east or west; on each side it only grows or falls. */
    private static void addParallels(List<Step> steps, GeodesicLine line, Geodesic way) {
        double length = way.distanceM();
        double north = northward(line, 0);
        int from = Square.rowOf(way.from());
        int to = Square.rowOf(way.to());
        if (north * northward(line, length) >= 0) {
            addParallels(steps, line, 0, length, from, to);
            return;
        }
        double turnM = halve(0, length, s -> north * northward(line, s) <= 0);
        double latitude = latitude(line, turnM);
        // The turn is the extreme of the edge; rounding must not put it on the other side of an end.
        double first = way.from().latitudeDeg();
        double last = way.to().latitudeDeg();
        double extreme = north > 0 ? Math.max(latitude, Math.max(first, last))
                : Math.min(latitude, Math.min(first, last));
        int turn = Square.rowOf(new GeoPosition(extreme, 0));
        addParallels(steps, line, 0, turnM, from, turn);
        addParallels(steps, line, turnM, length, turn, to);
    }

    private static void addParallels(List<Step> steps, GeodesicLine line, double startM, double endM, int from,
            int to) {
        int change = Integer.signum(to - from);
        for (int row = from; row != to; row += change) {
            int degree = (change > 0 ? row + 1 : row) - 90;
            double alongM = halve(startM, endM, s -> change * (latitude(line, s) - degree) >= 0);
            steps.add(new Step(GridLine.parallel(degree), alongM, 0, change));
        }
    }

    private static double latitude(GeodesicLine line, double alongM) {
        return line.Position(alongM, GeodesicMask.LATITUDE).lat2;
    }

    private static double northward(GeodesicLine line, double alongM) {
        GeodesicData at = line.Position(alongM, GeodesicMask.AZIMUTH);
        return Math.cos(Math.toRadians(at.azi2));
    }

    /** The first place that has passed, given that the end has passed and what has passed stays so. */
    static double halve(double startM, double endM, DoublePredicate passed) {
        double before = startM;
        double after = endM;
        while (after - before > EXACT_M) {
            double middle = (before + after) / 2;
            if (passed.test(middle)) {
                after = middle;
            } else {
                before = middle;
            }
        }
        return (before + after) / 2;
    }
}
