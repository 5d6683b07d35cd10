package org.straddle.outlook;

import java.time.Duration;

import org.straddle.model.Policies;
import org.straddle.model.StraddleFactory;

/**
 * The policies that say whether a plan will hold, as they are to be used. A figure that is missing, negative, no number or
 * out of its range is replaced by the model's default. The defaults are ours, without a source; those about people mean to
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

    private static final double LONGEST_MINUTES = 100 * 24 * 60;

    /** @param chosen may be null: then every figure is the default */
    public static HoldFigures of(Policies chosen) {
        Policies usual = StraddleFactory.eINSTANCE.createPolicies();
        Policies p = chosen == null ? usual : chosen;
        return new HoldFigures(
                minutes(p.getInHandMinutes(), usual.getInHandMinutes()),
                p.getDriveSurenessPercent() >= 50 && p.getDriveSurenessPercent() <= 100
                        ? Math.min(SUREST, p.getDriveSurenessPercent() / 100) : usual.getDriveSurenessPercent() / 100,
                share(p.getComputedDriveSpreadPercent(), usual.getComputedDriveSpreadPercent()),
                share(p.getKnownDriveSpreadPercent(), usual.getKnownDriveSpreadPercent()),
                share(p.getLeastKeepingPercent(), usual.getLeastKeepingPercent()),
                above0(p.getLongestDutyMinutes(), usual.getLongestDutyMinutes()),
                minutes(p.getLeastRestMinutes(), usual.getLeastRestMinutes()),
                minutes(p.getMealMinutes(), usual.getMealMinutes()),
                above0(p.getLongestStopMinutes(), usual.getLongestStopMinutes()));
    }

    private static double share(double percent, double otherwise) {
        return (percent >= 0 && percent <= 100 ? percent : otherwise) / 100;
    }

    private static Duration above0(double minutes, double otherwise) {
        return minutes(minutes > 0 ? minutes : otherwise, otherwise);
    }

    private static Duration minutes(double minutes, double otherwise) {
        return Duration.ofSeconds(Math.round(60 * (minutes >= 0 && minutes <= LONGEST_MINUTES ? minutes : otherwise)));
    }
}
