package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.List;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.track.Seconds;
import org.straddle.sky.track.Sightline;
import org.straddle.sky.track.SignChanges;

/**
 * The sun in the sky of a place, geometric: refraction, which lifts the sun by about 0.57° at the
 * horizon, is left to the elevation one compares with, as {@link #SUNRISE_DEG} does. Good to 0.02°
 * between 1950 and 2050.
 */
public final class Sun {

    /** The upper edge on a level horizon: 34′ of refraction and 16′ of radius, the almanacs' convention. */
    public static final double SUNRISE_DEG = -0.833;
    /** Civil twilight begins and ends here. */
    public static final double CIVIL_TWILIGHT_DEG = -6;

    private static final double STEP_S = 600;

    private Sun() {
    }

    /** Elevation of the sun's centre, degrees, −90 to 90. */
    public static double elevationDeg(Place place, Instant instant) {
        return Math.toDegrees(look(place, instant).elevation());
    }

    /** Direction of the sun, degrees from true north over east. */
    public static double azimuthDeg(Place place, Instant instant) {
        return Math.toDegrees(look(place, instant).azimuth());
    }

    /**
     * The times within a window at which the sun's centre stands above an elevation.
     *
     * @param elevationDeg {@link #SUNRISE_DEG}, {@link #CIVIL_TWILIGHT_DEG} or another
     */
    public static List<Window> daylight(Place place, Window within, double elevationDeg) {
        double least = Math.toRadians(elevationDeg);
        double length = Seconds.between(within.start(), within.end());
        SignChanges changes = new SignChanges(
                t -> look(place, Seconds.after(within.start(), t)).elevation() - least);
        changes.grid(0, length, STEP_S);
        return changes.positive(0, length, 0).stream().map(span -> new Window(
                Seconds.after(within.start(), span.from()), Seconds.after(within.start(), span.to()))).toList();
    }

    private static Sightline look(Place place, Instant instant) {
        Vector3D sun = EarthOrientation.none().frames().sun(instant);
        return new Sightline(place, null).toward(sun.getX(), sun.getY(), sun.getZ());
    }
}
