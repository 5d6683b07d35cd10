package org.straddle.sky.track;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.orekit.time.AbsoluteDate;
import org.orekit.utils.Constants;

/**
 * The sun's apparent place by Meeus, Astronomical Algorithms (2nd ed., 1998), chapter 25, lower
 * accuracy: 0.01° by its author's word; a fixture holds it to 0.02°.
 *
 * <p>Orekit's analytical sun leaves out the motion of perihelion: right in 2000, it is wrong by 0.09°
 * in 2031, half a minute of sunrise.
 */
final class SolarPosition {

    private static final double SECONDS_PER_CENTURY = 36_525 * 86_400.0;

    private SolarPosition() {
    }

    /** Metres, geocentric, in the frame of the true equator and equinox of date. */
    static Vector3D trueOfDate(AbsoluteDate date) {
        double t = date.durationFrom(AbsoluteDate.J2000_EPOCH) / SECONDS_PER_CENTURY;
        double meanLongitude = 280.46646 + t * (36_000.76983 + t * 0.0003032);
        double anomaly = Math.toRadians(357.52911 + t * (35_999.05029 - t * 0.0001537));
        double centre = (1.914602 - t * (0.004817 + t * 0.000014)) * Math.sin(anomaly)
                + (0.019993 - t * 0.000101) * Math.sin(2 * anomaly) + 0.000289 * Math.sin(3 * anomaly);
        double node = Math.toRadians(125.04 - 1934.136 * t);
        // Aberration and nutation in longitude.
        double longitude = Math.toRadians(meanLongitude + centre - 0.00569 - 0.00478 * Math.sin(node));
        double obliquity = Math.toRadians(23.4392911 - 0.0130042 * t + 0.00256 * Math.cos(node));
        double eccentricity = 0.016708634 - t * (0.000042037 + t * 0.0000001267);
        double distance = 1.000001018 * (1 - eccentricity * eccentricity)
                / (1 + eccentricity * Math.cos(anomaly + Math.toRadians(centre))) * Constants.IAU_2012_ASTRONOMICAL_UNIT;
        return new Vector3D(distance, new Vector3D(Math.cos(longitude), Math.sin(longitude) * Math.cos(obliquity),
                Math.sin(longitude) * Math.sin(obliquity)));
    }
}
