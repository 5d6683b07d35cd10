package org.straddle.grid;

import org.straddle.words.Catalogue;

import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;
import net.sf.geographiclib.GeodesicMask;

/** The way that starts at a place in one direction, for many places on it: what they share is worked out once. */
public final class GeodesicRay {

    private static final Catalogue TEXTS = Catalogue.of(GeodesicRay.class);

    private final GeodesicLine line;

    private GeodesicRay(GeodesicLine line) {
        this.line = line;
    }

    /**
     * @param bearingDeg direction at the start, clockwise from true north
     * @throws IllegalArgumentException if the direction is not finite
     */
    public static GeodesicRay from(GeoPosition start, double bearingDeg) {
        if (!Double.isFinite(bearingDeg)) {
            throw new IllegalArgumentException(TEXTS.text("geodesicRay.bearingMustFinite", "bearingDeg", bearingDeg));
        }
        return new GeodesicRay(net.sf.geographiclib.Geodesic.WGS84.Line(start.latitudeDeg(), start.longitudeDeg(), bearingDeg,
                GeodesicMask.DISTANCE_IN | GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE));
    }

    /** The place this many metres along the way. */
    public GeoPosition pointAt(double distanceM) {
        GeodesicData place = line.Position(distanceM, GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE);
        return new GeoPosition(place.lat2, place.lon2);
    }
}
