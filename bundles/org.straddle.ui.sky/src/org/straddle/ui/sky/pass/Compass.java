package org.straddle.ui.sky.pass;

import org.straddle.words.Catalogue;

/** The eight winds, for people who point by hand. */
public final class Compass {

    private static final Catalogue TEXTS = Catalogue.of(Compass.class);

    private static final int WINDS = 8;

    private Compass() {
    }

    /** @param azimuthDeg any angle, from true north over east */
    public static String wind(double azimuthDeg) {
        return TEXTS.text("wind." + Math.floorMod(Math.round(azimuthDeg * WINDS / 360), WINDS));
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
