package org.straddle.terrain;

/**
 * At which elevation something on a curved Earth appears through air that bends light.
 *
 * <p>A ray near the ground is bent downwards to an arc; with the refraction coefficient k its curvature is k times
 * that of the Earth. Seen from the ray the Earth is flatter: it has the radius R/(1 − k), and rays are straight.
 *
 * @param radiusM radius of the Earth along the way, metres, above 0
 * @param refraction k, 0 for no air, below 1
 */
public record BentRay(double radiusM, double refraction) {

    /** Mean radius R1 = (2a + b)/3 of the WGS-84 ellipsoid in metres (IUGG). */
    public static final double MEAN_RADIUS_M = 6_371_008.8;

    /** k of light near the ground: the value of C. F. Gauss (1826), still usual in surveying; from memory. */
    public static final double USUAL_REFRACTION = 0.13;

    public BentRay {
        if (!(radiusM > 0) || Double.isInfinite(radiusM)) {
            throw new IllegalArgumentException("impossible radius of " + radiusM + " m");
        }
        if (!(refraction >= -1 && refraction < 1)) {
            throw new IllegalArgumentException("A refraction coefficient of " + refraction
                    + " cannot be: give 0 for none, 0.13 for light, below 1.");
        }
    }

    /**
     * @param eyeM height of the eye or antenna, metres
     * @param distanceM length of the way along the ground, metres, above 0
     * @param heightM height of the thing seen, above the same level
     * @return degrees above the horizontal of the eye
     */
    public double elevationDeg(double eyeM, double distanceM, double heightM) {
        double radius = radiusM / (1 - refraction);
        double angle = distanceM / radius;
        // (radius + height) cos(angle) − radius without losing metres in millions of them.
        double half = Math.sin(angle / 2);
        double up = heightM * Math.cos(angle) - eyeM - 2 * radius * half * half;
        return Math.toDegrees(Math.atan2(up, (radius + heightM) * Math.sin(angle)));
    }
}
