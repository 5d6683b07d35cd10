package org.straddle.grid;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;
import net.sf.geographiclib.GeodesicMask;

/**
 * The point of a geodesic that is nearest to a position. Found by walking along the geodesic by the
 * part of the way that points along it, until none is left: each walk leaves about (distance / Earth
 * radius)² of the error. Good up to some thousand kilometres from the position.
 *
 * @param alongM from the start of the geodesic in metres; negative or beyond its end where the foot lies outside
 * @param distanceM from the position to the foot
 */
record EdgeFoot(double alongM, double distanceM) {

    private static final double RADIUS_M = 6_371_008.8;
    private static final double SETTLED_M = 1e-5;
    private static final int WAY = GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH;

    static EdgeFoot of(GeodesicLine line, GeoPosition position) {
        double along = 0;
        double distance = 0;
        for (int step = 0; step < 30; step++) {
            GeodesicData at = line.Position(along, GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH);
            GeodesicData way = Geodesic.WGS84.Inverse(at.lat2, at.lon2, position.latitudeDeg(), position.longitudeDeg(), WAY);
            distance = way.s12;
            double turn = Math.toRadians(way.azi1 - at.azi2);
            double radians = way.s12 / RADIUS_M;
            double move = RADIUS_M * Math.atan2(Math.sin(radians) * Math.cos(turn), Math.cos(radians));
            if (Math.abs(move) < SETTLED_M) {
                break;
            }
            along += move;
        }
        return new EdgeFoot(along, distance);
    }

    /** The nearest point that is on the edge of this length. */
    static EdgeFoot onEdge(GeodesicLine line, double lengthM, GeoPosition position) {
        EdgeFoot foot = of(line, position);
        if (foot.alongM >= 0 && foot.alongM <= lengthM) {
            return foot;
        }
        double end = foot.alongM < 0 ? 0 : lengthM;
        GeodesicData at = line.Position(end, GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE);
        return new EdgeFoot(end,
                Geodesic.WGS84.Inverse(at.lat2, at.lon2, position.latitudeDeg(), position.longitudeDeg(), WAY).s12);
    }
}
