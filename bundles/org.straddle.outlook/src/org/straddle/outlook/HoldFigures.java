package org.straddle.outlook;

import java.time.Duration;

import org.straddle.model.Figures;
import org.straddle.model.Policies;
import org.straddle.model.StraddlePackage.Literals;

/**
 * The policies that say whether a plan will hold, as they are to be used. The defaults are ours, without a source; those about people mean to
 * be careful, and working-time and traffic law may ask for more.
 *
 * @param inHand         before the first turn of a stop, besides the set-up
 * @param driveSureness  probability that a drive is done in its planned time, 0.5 up to 0.999
 * @param computedSpread standard deviation of a computed drive over its time at the wheel
 * @param knownSpread    the same of a drive that somebody knows
 * @param leastKeeping   least chance that a turn is kept as published, 0 to 1
 * @param longestDuty    of a team, from leaving to being back, above 0
 * @param leastRest      between two days of a team
 * @param meal           pause about noon and in the evening; zero asks for none
 * @param longestStop    of a team at one stop without relief, above 0
 */
public record HoldFigures(Duration inHand, double driveSureness, double computedSpread, double knownSpread,
        double leastKeeping, Duration longestDuty, Duration leastRest, Duration meal, Duration longestStop) {

    private static final double SUREST = 0.999;

    /** @param chosen may be null: then every figure is the default */
    public static HoldFigures of(Policies chosen) {
        Figures figures = Figures.of(chosen);
        return new HoldFigures(
                figures.minutes(Literals.POLICIES__IN_HAND_MINUTES),
                Math.min(SUREST, figures.share(Literals.POLICIES__DRIVE_SURENESS_PERCENT)),
                figures.share(Literals.POLICIES__COMPUTED_DRIVE_SPREAD_PERCENT),
                figures.share(Literals.POLICIES__KNOWN_DRIVE_SPREAD_PERCENT),
                figures.share(Literals.POLICIES__LEAST_KEEPING_PERCENT),
                figures.minutes(Literals.POLICIES__LONGEST_DUTY_MINUTES),
                figures.minutes(Literals.POLICIES__LEAST_REST_MINUTES),
                figures.minutes(Literals.POLICIES__MEAL_MINUTES),
                figures.minutes(Literals.POLICIES__LONGEST_STOP_MINUTES));
    }
}
