package org.straddle.ui.sky.pass;

import java.util.List;

/** The eight winds, for people who point by hand. */
public final class Compass {

    private static final List<String> WINDS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

    private Compass() {
    }

    /** @param azimuthDeg any angle, from true north over east */
    public static String wind(double azimuthDeg) {
        return WINDS.get((int) Math.floorMod(Math.round(azimuthDeg / 45), 8L));
    }

    /** {@code 187° S}. */
    public static String words(double azimuthDeg) {
        return whole(azimuthDeg) + "° " + wind(azimuthDeg);
    }

    /** Whole degrees, 0 to 359. */
    public static long whole(double azimuthDeg) {
        return Math.floorMod(Math.round(azimuthDeg), 360L);
    }
}
