package org.straddle.outlook;

import java.time.Duration;

import org.straddle.model.Policies;
import org.straddle.model.StraddleFactory;
import org.straddle.sky.Window;

/**
 * The figures of the event's policies as they are to be used. A figure that is missing, negative, not
 * a number, or zero where zero makes no sense, is replaced by the model's default.
 *
 * @param roadSpeedKmh            average speed of a leg, above 0
 * @param detourFactor            road length over the shortest way, at least 1
 * @param turnGap                 least time between two turns of a team
 * @param setUp                   from arrival until the station can work
 * @param takeDown                from the last turn until the team can leave
 * @param minimumTurn             a shorter turn is not worth planning
 * @param minimumPeakElevationDeg a lower pass is not worth planning
 * @param surveyAgeLimitDays      above 0
 * @param reviewValidityDays      above 0
 * @param elementSetAgeLimit      above 0
 * @param leastPresence           probability, above 0, at most 1
 * @param reachElevationDeg       a chaser counts as reached while the bird is above this, 0 to 90
 * @param stationSpanM            length of the station across the line
 * @param loneOperatorAllowed     may an operator work alone
 * @param drivingLimit            for one team in one day, above 0
 * @param breakAfter              driving after which a break is due, above 0
 * @param breakLength             length of a break
 * @param usableEnergy            part of the stored energy that a plan may count on, above 0, at most 1
 * @param coldestDegC             lowest temperature expected at the sites
 */
public record PolicyFigures(double roadSpeedKmh, double detourFactor, Duration turnGap, Duration setUp,
        Duration takeDown, Duration minimumTurn, double minimumPeakElevationDeg, int surveyAgeLimitDays,
        int reviewValidityDays, Duration elementSetAgeLimit, double leastPresence, double reachElevationDeg,
        double stationSpanM, boolean loneOperatorAllowed, Duration drivingLimit, Duration breakAfter, Duration breakLength,
        double usableEnergy, double coldestDegC) {

    /** @param chosen may be null: then every figure is the default */
    public static PolicyFigures of(Policies chosen) {
        Policies defaults = StraddleFactory.eINSTANCE.createPolicies();
        Policies p = chosen == null ? defaults : chosen;
        return new PolicyFigures(
                above0(p.getRoadSpeedKmh(), defaults.getRoadSpeedKmh()),
                p.getDetourFactor() >= 1 && p.getDetourFactor() <= 10 ? p.getDetourFactor()
                        : defaults.getDetourFactor(),
                minutes(p.getTurnGapMinutes(), defaults.getTurnGapMinutes()),
                minutes(p.getSetUpMinutes(), defaults.getSetUpMinutes()),
                minutes(p.getTakeDownMinutes(), defaults.getTakeDownMinutes()),
                minutes(p.getMinimumTurnMinutes(), defaults.getMinimumTurnMinutes()),
                from0(p.getMinimumPeakElevationDeg(), defaults.getMinimumPeakElevationDeg()),
                (int) above0(p.getSurveyAgeLimitDays(), defaults.getSurveyAgeLimitDays()),
                (int) above0(p.getReviewValidityDays(), defaults.getReviewValidityDays()),
                minutes(24 * 60 * above0(p.getElementSetAgeLimitDays(), defaults.getElementSetAgeLimitDays()), 0),
                p.getLeastPresence() > 0 && p.getLeastPresence() <= 1 ? p.getLeastPresence()
                        : defaults.getLeastPresence(),
                p.getReachElevationDeg() <= 90 ? from0(p.getReachElevationDeg(), defaults.getReachElevationDeg())
                        : defaults.getReachElevationDeg(),
                from0(p.getStationSpanM(), defaults.getStationSpanM()),
                p.isLoneOperatorAllowed(),
                minutes(above0(p.getDrivingLimitMinutes(), defaults.getDrivingLimitMinutes()), 0),
                minutes(above0(p.getBreakAfterMinutes(), defaults.getBreakAfterMinutes()), 0),
                minutes(p.getBreakMinutes(), defaults.getBreakMinutes()),
                p.getUsableEnergyPercent() > 0 && p.getUsableEnergyPercent() <= 100 ? p.getUsableEnergyPercent() / 100
                        : defaults.getUsableEnergyPercent() / 100,
                Math.abs(p.getColdestDegC()) <= 100 ? p.getColdestDegC() : defaults.getColdestDegC());
    }

    /** How long a station is up during a stop: between set-up and take-down. */
    public Duration standing(Window stop) {
        Duration up = stop.duration().minus(setUp).minus(takeDown);
        return up.isNegative() ? Duration.ZERO : up;
    }

    private static double above0(double value, double otherwise) {
        return value > 0 && Double.isFinite(value) ? value : otherwise;
    }

    private static double from0(double value, double otherwise) {
        return value >= 0 && Double.isFinite(value) ? value : otherwise;
    }

    private static Duration minutes(double value, double otherwise) {
        // A century bounds what a slip of the keyboard can do to later sums of durations.
        return Duration.ofSeconds(Math.round(Math.min(60 * from0(value, otherwise), 100 * 366 * 86_400.0)));
    }
}
