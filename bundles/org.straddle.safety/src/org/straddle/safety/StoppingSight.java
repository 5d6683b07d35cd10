package org.straddle.safety;

import org.straddle.words.Catalogue;

/**
 * The length of road that a driver must be able to see to stop before something that stands on it: the way covered
 * during 2.5 s of reaction, and the braking way. Something that approaching drivers see from less far away is in
 * danger, and so are they.
 *
 * <p>Formulas and constants: AASHTO Green Book, as printed in the TxDOT Roadway Design Manual; the metric form from
 * memory. Level, wet road; a car with worn tyres or on ice needs more.
 */
public final class StoppingSight {

    private static final Catalogue TEXTS = Catalogue.of(StoppingSight.class);

    /** Reaction time, s (AASHTO Green Book). */
    public static final double REACTION_S = 2.5;

    /** Deceleration, m/s² (AASHTO Green Book, metric). */
    public static final double DECELERATION_MPS2 = 3.4;

    /** Deceleration, ft/s² (AASHTO Green Book, US customary). */
    public static final double DECELERATION_FTPS2 = 11.2;

    private StoppingSight() {
    }

    /**
     * @param speedKmh 0 or more
     * @return metres, not rounded; the printed tables round up to 5 m
     */
    public static double metres(double speedKmh) {
        return 0.278 * notNegative(speedKmh) * REACTION_S + 0.039 * speedKmh * speedKmh / DECELERATION_MPS2;
    }

    /**
     * @param speedMph 0 or more
     * @return feet, not rounded; the printed tables round up to 5 ft
     */
    public static double feet(double speedMph) {
        return 1.47 * notNegative(speedMph) * REACTION_S + 1.075 * speedMph * speedMph / DECELERATION_FTPS2;
    }

    /**
     * On a slope.
     *
     * @param speedMph 0 or more
     * @param grade rise over run in the direction of travel, negative downhill; more than −0.347, where the formula
     *     says that a car never stops
     * @return feet, not rounded
     */
    public static double feetOnGrade(double speedMph, double grade) {
        double braking = DECELERATION_FTPS2 / 32.2 + grade;
        if (!(braking > 0)) {
            throw new IllegalArgumentException(TEXTS.text("stoppingSight.gradeFormulaGives", "grade", grade));
        }
        return 1.47 * notNegative(speedMph) * REACTION_S + speedMph * speedMph / (30 * braking);
    }

    /** As the tables print it: up to the next 5, metres or feet. */
    public static int roundedUp(double length) {
        return (int) Math.ceil(length / 5) * 5;
    }

    private static double notNegative(double speed) {
        if (!(speed >= 0) || Double.isInfinite(speed)) {
            throw new IllegalArgumentException("A speed is 0 or more, not " + speed + ".");
        }
        return speed;
    }
}
