package org.straddle.atlas.plane;

import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;

/**
 * Polar stereographic projection, EPSG method 9810, variant A (IOGP Publication 373-7-2).
 *
 * @param spheroid the shape of the Earth
 * @param north centred on the north pole, else on the south pole
 * @param originLongitudeDeg runs down from the north pole, and up from the south pole
 * @param scaleFactor at the pole
 */
public record PolarStereographic(Spheroid spheroid, boolean north, double originLongitudeDeg, double scaleFactor)
        implements Plane {

    private static final Catalogue TEXTS = Catalogue.of(PolarStereographic.class);

    @Override
    public GeoPosition centre() {
        return new GeoPosition(north ? 90 : -90, originLongitudeDeg);
    }

    @Override
    public void put(double latitudeDeg, double longitudeDeg, double[] into, int at) {
        double towards = Math.toRadians(north ? latitudeDeg : -latitudeDeg);
        double fromPole = rimM() * Math.exp(-spheroid.isometric(towards));
        double east = Math.toRadians(longitudeDeg - originLongitudeDeg);
        into[at] = fromPole * Math.sin(east);
        into[at + 1] = north ? -fromPole * Math.cos(east) : fromPole * Math.cos(east);
    }

    @Override
    public GeoPosition position(double x, double y) {
        double fromPole = Math.hypot(x, y);
        if (fromPole == 0) {
            return centre();
        }
        double latitude = Math.toDegrees(spheroid.latitudeRad(-Math.log(fromPole / rimM())));
        double east = Math.toDegrees(Math.atan2(x, north ? -y : y));
        return new GeoPosition(Math.max(-90, Math.min(90, north ? latitude : -latitude)),
                Math.IEEEremainder(originLongitudeDeg + east, 360));
    }

    @Override
    public double scaleAt(GeoPosition place) {
        PlanePoint point = put(place);
        double ring = spheroid.parallelRadius(Math.toRadians(place.latitudeDeg())) * spheroid.semiMajorM();
        // At the pole itself the ring is a point and the quotient means nothing.
        return ring < 1 ? scaleFactor : Math.hypot(point.x(), point.y()) / ring;
    }

    @Override
    public double rimM() {
        double e = spheroid.eccentricity();
        return 2 * spheroid.semiMajorM() * scaleFactor / Math.sqrt(Math.pow(1 + e, 1 + e) * Math.pow(1 - e, 1 - e));
    }

    @Override
    public String words() {
        return TEXTS.text("plane.polar", "north", north);
    }
}
