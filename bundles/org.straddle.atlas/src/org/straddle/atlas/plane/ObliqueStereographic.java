package org.straddle.atlas.plane;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.PositionText;
import org.straddle.words.Catalogue;

/**
 * Oblique stereographic projection, EPSG method 9809 (IOGP Publication 373-7-2, "Coordinate Conversions and
 * Transformations including Formulas"): the spheroid is laid conformally on the sphere that fits it best at the
 * centre, and that sphere on the plane.
 *
 * <p>The fitting sphere counts longitudes a little faster than the spheroid (by 0.3 % at the equator, nothing at a
 * pole), so the plane has a seam opposite to the centre's meridian, beyond the pole: some 50 km wide at worst, at the
 * rim, a quarter of the Earth from the event. Not for centres at a pole.
 *
 * @param spheroid the shape of the Earth
 * @param centre natural origin
 * @param scaleFactor at the centre
 */
public record ObliqueStereographic(Spheroid spheroid, GeoPosition centre, double scaleFactor, Sphere sphere)
        implements Plane {

    private static final Catalogue TEXTS = Catalogue.of(ObliqueStereographic.class);

    /** The conformal sphere: radius in metres, factor of longitudes, factor of latitudes, its latitude of the centre. */
    record Sphere(double radiusM, double n, double c, double sinCentre, double cosCentre) {

        static Sphere fitting(Spheroid spheroid, double latitudeRad) {
            double e2 = spheroid.eccentricitySquared();
            double sin = Math.sin(latitudeRad);
            double cos2 = Math.cos(latitudeRad) * Math.cos(latitudeRad);
            double root = 1 - e2 * sin * sin;
            double radius = spheroid.semiMajorM() * Math.sqrt(1 - e2) / root;
            double n = Math.sqrt(1 + e2 * cos2 * cos2 / (1 - e2));
            double w1 = Math.exp(2 * n * spheroid.isometric(latitudeRad));
            double sinFirst = (w1 - 1) / (w1 + 1);
            double c = (n + sin) * (1 - sinFirst) / ((n - sin) * (1 + sinFirst));
            double sinCentre = (c * w1 - 1) / (c * w1 + 1);
            return new Sphere(radius, n, c, sinCentre, Math.sqrt(1 - sinCentre * sinCentre));
        }
    }

    public ObliqueStereographic(Spheroid spheroid, GeoPosition centre, double scaleFactor) {
        this(spheroid, centre, scaleFactor, Sphere.fitting(spheroid, Math.toRadians(centre.latitudeDeg())));
    }

    @Override
    public void put(double latitudeDeg, double longitudeDeg, double[] into, int at) {
        double w = sphere.c * Math.exp(2 * sphere.n * spheroid.isometric(Math.toRadians(latitudeDeg)));
        double sin = Double.isInfinite(w) ? 1 : (w - 1) / (w + 1);
        double cos = Double.isInfinite(w) ? 0 : 2 * Math.sqrt(w) / (w + 1);
        double apart = sphere.n * Math.toRadians(Math.IEEEremainder(longitudeDeg - centre.longitudeDeg(), 360));
        double cosApart = Math.cos(apart);
        double stretch = rimM() / (1 + sin * sphere.sinCentre + cos * sphere.cosCentre * cosApart);
        into[at] = stretch * cos * Math.sin(apart);
        into[at + 1] = stretch * (sin * sphere.cosCentre - cos * sphere.sinCentre * cosApart);
    }

    @Override
    public GeoPosition position(double x, double y) {
        double fromCentre = Math.hypot(x, y);
        if (fromCentre == 0) {
            return centre;
        }
        double angle = 2 * Math.atan(fromCentre / rimM());
        double sin = Math.cos(angle) * sphere.sinCentre + y * Math.sin(angle) * sphere.cosCentre / fromCentre;
        double apart = Math.atan2(x * Math.sin(angle),
                fromCentre * sphere.cosCentre * Math.cos(angle) - y * sphere.sinCentre * Math.sin(angle));
        double isometric = Math.log((1 + sin) / (sphere.c * (1 - sin))) / (2 * sphere.n);
        double latitude = Double.isInfinite(isometric) ? Math.copySign(90, isometric)
                : Math.toDegrees(spheroid.latitudeRad(isometric));
        double east = Math.max(-180, Math.min(180, Math.toDegrees(apart / sphere.n)));
        return new GeoPosition(Math.max(-90, Math.min(90, latitude)), Math.IEEEremainder(centre.longitudeDeg() + east, 360));
    }

    /** The scale of the plane on the sphere times that of the sphere on the spheroid. */
    @Override
    public double scaleAt(GeoPosition place) {
        double latitude = Math.toRadians(place.latitudeDeg());
        double w = sphere.c * Math.exp(2 * sphere.n * spheroid.isometric(latitude));
        double cosOverParallel = Double.isInfinite(w) || w == 0 ? 1
                : 2 * Math.sqrt(w) / (w + 1) / spheroid.parallelRadius(latitude);
        PlanePoint point = put(place);
        double outward = Math.hypot(point.x(), point.y()) / rimM();
        return scaleFactor * (1 + outward * outward) * sphere.n * sphere.radiusM / spheroid.semiMajorM() * cosOverParallel;
    }

    @Override
    public double rimM() {
        return 2 * sphere.radiusM * scaleFactor;
    }

    @Override
    public String words() {
        return TEXTS.text("plane.oblique",
                "centre", PositionText.write(centre, PositionText.Form.DEGREES));
    }
}
