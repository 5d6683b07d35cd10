package org.straddle.sky;

/** The Earth of element sets: they are fitted with, and must be used with, WGS-72 (AIAA 2006-6753). */
public final class Wgs72 {

    /** Gravitational parameter, km³/s². */
    public static final double MU_KM3_S2 = 398_600.8;
    /** Equatorial radius, km. */
    public static final double EARTH_RADIUS_KM = 6378.135;

    private Wgs72() {
    }
}
