package org.straddle.outlook;

import java.time.Duration;

import org.straddle.model.Figures;
import org.straddle.model.Policies;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.sky.Window;

/**
 * The figures of the event's policies as they are to be used: those that most of the program needs. Their ranges stand in
 * the model, and {@link Figures} reads them.
 *
 * @param roadSpeedKmh            average speed of a drive, above 0
 * @param detourFactor            road length over the shortest way, at least 1
 * @param turnGap                 least time between two turns of a team
 * @param setUp                   from arrival until the station can work
 * @param takeDown                from the last turn until the team can leave
 * @param minimumTurn             a shorter turn is not worth planning
 * @param minimumPeakElevationDeg a lower pass is not worth planning
 * @param visitAgeLimitDays      above 0
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
        Duration takeDown, Duration minimumTurn, double minimumPeakElevationDeg, int visitAgeLimitDays,
        int reviewValidityDays, Duration elementSetAgeLimit, double leastPresence, double reachElevationDeg,
        double stationSpanM, boolean loneOperatorAllowed, Duration drivingLimit, Duration breakAfter, Duration breakLength,
        double usableEnergy, double coldestDegC) {

    /** @param chosen may be null: then every figure is the default */
    public static PolicyFigures of(Policies chosen) {
        Figures figures = Figures.of(chosen);
        return new PolicyFigures(
                figures.value(Literals.POLICIES__ROAD_SPEED_KMH),
                figures.value(Literals.POLICIES__DETOUR_FACTOR),
                figures.minutes(Literals.POLICIES__TURN_GAP_MINUTES),
                figures.minutes(Literals.POLICIES__SET_UP_MINUTES),
                figures.minutes(Literals.POLICIES__TAKE_DOWN_MINUTES),
                figures.minutes(Literals.POLICIES__MINIMUM_TURN_MINUTES),
                figures.value(Literals.POLICIES__MINIMUM_PEAK_ELEVATION_DEG),
                (int) figures.value(Literals.POLICIES__VISIT_AGE_LIMIT_DAYS),
                (int) figures.value(Literals.POLICIES__REVIEW_VALIDITY_DAYS),
                figures.days(Literals.POLICIES__ELEMENT_SET_AGE_LIMIT_DAYS),
                figures.value(Literals.POLICIES__LEAST_PRESENCE),
                figures.value(Literals.POLICIES__REACH_ELEVATION_DEG),
                figures.value(Literals.POLICIES__STATION_SPAN_M),
                chosen != null && chosen.isLoneOperatorAllowed(),
                figures.minutes(Literals.POLICIES__DRIVING_LIMIT_MINUTES),
                figures.minutes(Literals.POLICIES__BREAK_AFTER_MINUTES),
                figures.minutes(Literals.POLICIES__BREAK_MINUTES),
                figures.share(Literals.POLICIES__USABLE_ENERGY_PERCENT),
                figures.value(Literals.POLICIES__COLDEST_DEG_C));
    }

    /** How long a station is up during a stop: between set-up and take-down. */
    public Duration standing(Window stop) {
        Duration up = stop.duration().minus(setUp).minus(takeDown);
        return up.isNegative() ? Duration.ZERO : up;
    }
}
