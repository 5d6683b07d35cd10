package org.straddle.grid;

import org.straddle.words.Catalogue;

import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;

/**
 * The shortest way between two places on the WGS-84 ellipsoid, after C. F. F. Karney, "Algorithms for
 * geodesics", J. Geodesy 87 (2013). A great circle on a sphere would be up to 0.5 % off: hundreds of
 * metres across a square, where presence is argued in single metres.
 *
 * @param from where it starts
 * @param to where it ends
 * @param distanceM length in metres
 * @param initialBearingDeg direction at the start, clockwise from true north, [0, 360)
 * @param finalBearingDeg direction of travel at the end, [0, 360)
 */
public record Geodesic(GeoPosition from, GeoPosition to, double distanceM, double initialBearingDeg,
        double finalBearingDeg) {

    private static final Catalogue TEXTS = Catalogue.of(Geodesic.class);

    private static final net.sf.geographiclib.Geodesic WGS84 = net.sf.geographiclib.Geodesic.WGS84;

    public static Geodesic between(GeoPosition from, GeoPosition to) {
        GeodesicData data = WGS84.Inverse(from.latitudeDeg(), from.longitudeDeg(), to.latitudeDeg(), to.longitudeDeg());
        return new Geodesic(from, to, data.s12, bearing(data.azi1), bearing(data.azi2));
    }

    /** In metres. */
    public static double distanceM(GeoPosition from, GeoPosition to) {
        return between(from, to).distanceM;
    }

    /** In degrees clockwise from true north, [0, 360). */
    public static double initialBearingDeg(GeoPosition from, GeoPosition to) {
        return between(from, to).initialBearingDeg;
    }

    /**
     * Where one arrives on a geodesic.
     *
     * @param bearingDeg direction at the start, clockwise from true north
     * @param distanceM metres to go; negative goes backwards
     * @throws IllegalArgumentException if a value is not finite
     */
    public static GeoPosition destination(GeoPosition from, double bearingDeg, double distanceM) {
        if (!Double.isFinite(bearingDeg) || !Double.isFinite(distanceM)) {
            throw new IllegalArgumentException(
                    TEXTS.text("geodesic.bearingDistanceMust", "bearingDeg", bearingDeg, "distanceM", distanceM));
        }
        GeodesicData end = WGS84.Direct(from.latitudeDeg(), from.longitudeDeg(), bearingDeg, distanceM);
        return new GeoPosition(end.lat2, end.lon2);
    }

    /** The place this many metres from the start, towards the end. */
    public GeoPosition pointAt(double distanceM) {
        return destination(from, initialBearingDeg, distanceM);
    }

    /** The library's own line, for searches along this way. */
    GeodesicLine line() {
        return WGS84.InverseLine(from.latitudeDeg(), from.longitudeDeg(), to.latitudeDeg(), to.longitudeDeg());
    }

    /** A bearing in [0, 360); a trace west of north would else round up to 360. */
    static double bearing(double azimuthDeg) {
        double turned = (azimuthDeg < 0 ? azimuthDeg + 360 : azimuthDeg) + 0.0;
        return turned >= 360 ? 0 : turned;
    }
}
