package org.straddle.atlas.plane;

import org.straddle.grid.GeoPosition;

/**
 * The plane that one event is drawn on: conformal, so that squares keep their angles and a circle around a site stays
 * a circle, and centred on the event, so that scale hardly changes where the teams are. Coordinates are metres from
 * the centre, x towards the east and y towards the north there.
 *
 * <p>Both planes are stereographic. They have no edge at 180° of longitude and none at a pole; the only place that
 * they cannot show is the one opposite to the centre. A map draws the half of the Earth around the centre, up to the
 * {@link #rimM() rim}.
 */
public sealed interface Plane permits ObliqueStereographic, PolarStereographic {

    /** Nearer to a pole than this the plane is centred on the pole; the oblique formulas end there. */
    double POLAR_FROM_DEG = 89;

    /** A plane centred on a place, or on the pole when that is less than a degree away. */
    static Plane about(GeoPosition centre) {
        return Math.abs(centre.latitudeDeg()) >= POLAR_FROM_DEG
                ? new PolarStereographic(Spheroid.WGS84, centre.latitudeDeg() > 0, centre.longitudeDeg(), 1)
                : new ObliqueStereographic(Spheroid.WGS84, centre, 1);
    }

    /** Where x and y are 0. */
    GeoPosition centre();

    /**
     * Puts a place on the plane: x and y in metres into two slots of an array; not finite for the place opposite to
     * the centre.
     */
    void put(double latitudeDeg, double longitudeDeg, double[] into, int at);

    /** The place at a point of the plane, metres. */
    GeoPosition position(double x, double y);

    /** Metres on the plane for one metre on the ground there. */
    double scaleAt(GeoPosition place);

    /** Distance from the centre to places that are a quarter of the Earth away, metres on the plane. */
    double rimM();

    /** The name of the projection with its centre, for the foot of a page. */
    String words();

    default PlanePoint put(GeoPosition place) {
        double[] point = new double[2];
        put(place.latitudeDeg(), place.longitudeDeg(), point, 0);
        return new PlanePoint(point[0], point[1]);
    }

    /** Direction of true north at a place, degrees clockwise from the y axis, −180 to 180. */
    default double northDeg(GeoPosition place) {
        double step = place.latitudeDeg() > 89.9 ? -0.001 : 0.001;
        PlanePoint here = put(place);
        PlanePoint there = put(new GeoPosition(place.latitudeDeg() + step, place.longitudeDeg()));
        return Math.toDegrees(Math.atan2((there.x() - here.x()) * Math.signum(step),
                (there.y() - here.y()) * Math.signum(step)));
    }
}
