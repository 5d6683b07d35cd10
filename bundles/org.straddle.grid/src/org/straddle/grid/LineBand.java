package org.straddle.grid;

import java.util.ArrayList;
import java.util.List;
import net.sf.geographiclib.Constants;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;
import net.sf.geographiclib.GeodesicMask;

/**
 * The stretch of a road's edge that lies within a distance of a line.
 *
 * <p>The edge is halved until its pieces are short; a piece whose ends are so far from the line that it
 * cannot come near is dropped at once, since nobody gets nearer to a line than he walks. Over a piece of
 * {@link #PIECE_M} the distance to a line is a straight function but for PIECE_M² tan φ / 8R, 5 mm at 45°
 * of latitude and 6 cm at 85°, which is the error of what is found.
 *
 * @param fromM where it begins, in metres along the edge
 * @param toM where it ends
 * @param nearestM where it is nearest to the line
 * @param distanceM how near it is there
 */
record LineBand(double fromM, double toM, double nearestM, double distanceM) {

    private static final double PIECE_M = 500;
    private static final double E2 = Constants.WGS84_f * (2 - Constants.WGS84_f);

    /** @param halfM the distance, up to some kilometres */
    static List<LineBand> on(GeodesicLine edge, double lengthM, GridLine boundary, double halfM) {
        List<LineBand> found = new ArrayList<>();
        search(found, edge, boundary, halfM, 0, offM(edge, boundary, 0), lengthM, offM(edge, boundary, lengthM));
        return found;
    }

    private static void search(List<LineBand> found, GeodesicLine edge, GridLine boundary, double halfM, double startM,
            double startOffM, double endM, double endOffM) {
        // Two per cent for the curvature that far distances are not exact for.
        double nearest = (0.98 * (Math.abs(startOffM) + Math.abs(endOffM)) - (endM - startM)) / 2;
        if (nearest > halfM) {
            return;
        }
        if (endM - startM > PIECE_M) {
            double middle = (startM + endM) / 2;
            double middleOff = offM(edge, boundary, middle);
            search(found, edge, boundary, halfM, startM, startOffM, middle, middleOff);
            search(found, edge, boundary, halfM, middle, middleOff, endM, endOffM);
            return;
        }
        int sign = startOffM <= endOffM ? 1 : -1;
        double first = sign * startOffM;
        double last = sign * endOffM;
        if (last < -halfM || first > halfM) {
            return;
        }
        double from = first >= -halfM ? startM
                : Crossings.halve(startM, endM, s -> sign * offM(edge, boundary, s) >= -halfM);
        double to = last <= halfM ? endM : Crossings.halve(startM, endM, s -> sign * offM(edge, boundary, s) > halfM);
        double at = first >= 0 ? from : last <= 0 ? to
                : Crossings.halve(startM, endM, s -> sign * offM(edge, boundary, s) >= 0);
        add(found, new LineBand(from, to, at, first < 0 && last > 0 ? 0 : Math.abs(offM(edge, boundary, at))));
    }

    /** Pieces that touch are one stretch. */
    private static void add(List<LineBand> found, LineBand next) {
        LineBand last = found.isEmpty() ? null : found.get(found.size() - 1);
        if (last == null || last.toM < next.fromM) {
            found.add(next);
            return;
        }
        LineBand nearer = next.distanceM < last.distanceM ? next : last;
        found.set(found.size() - 1, new LineBand(last.fromM, next.toM, nearer.nearestM, nearer.distanceM));
    }

    private static double offM(GeodesicLine edge, GridLine boundary, double alongM) {
        GeodesicData at = edge.Position(alongM, GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE);
        return offM(at.lat2, at.lon2, boundary);
    }

    /**
     * Distance from a line in metres, north or east of it positive. Exact to a millimetre within a
     * kilometre; from afar good to about a hundredth.
     */
    static double offM(double latitudeDeg, double longitudeDeg, GridLine boundary) {
        double latitude = Math.toRadians(latitudeDeg);
        if (!boundary.isMeridian()) {
            double middle = Math.sin((latitude + Math.toRadians(boundary.degree())) / 2);
            double curvature = Constants.WGS84_a * (1 - E2) / Math.pow(1 - E2 * middle * middle, 1.5);
            return curvature * Math.toRadians(latitudeDeg - boundary.degree());
        }
        double sine = Math.sin(latitude);
        double radius = Constants.WGS84_a / Math.sqrt(1 - E2 * sine * sine);
        double east = Math.toRadians(Math.IEEEremainder(longitudeDeg - boundary.degree(), 360));
        if (Math.cos(east) < 0) {
            // On the other half of the Earth a pole is the nearest point of the meridian.
            return Math.copySign(radius * Math.acos(Math.abs(sine)), east);
        }
        return radius * Math.asin(Math.cos(latitude) * Math.sin(east));
    }
}
