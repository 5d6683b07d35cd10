package org.straddle.outlook;

import java.time.Duration;

import org.hipparchus.special.Erf;

/**
 * How long a drive may take: breaks, and a time at the wheel that is normally distributed about that of the drive.
 *
 * @param spread standard deviation of the time at the wheel over that time
 */
public record DriveTime(Road road, double spread) {

    /** Somebody who knows a drive is surer of it. */
    public static DriveTime of(Road road, HoldFigures figures) {
        return new DriveTime(road, road.isEntered() ? figures.knownSpread() : figures.computedSpread());
    }

    /** How much longer than its usual time a drive is planned for each part of spread: the quantile of the normal distribution. */
    public static double deviations(double sureness) {
        return Math.sqrt(2) * Erf.erfInv(2 * sureness - 1);
    }

    /** Usual time with breaks. */
    public Duration usual() {
        return road.total();
    }

    /** Standard deviation. */
    public Duration deviation() {
        return Duration.ofSeconds(Math.round(road.driving().toSeconds() * spread));
    }

    /** The time within which it is done with the probability that the event's policy asks for, breaks included. */
    public Duration planned(HoldFigures figures) {
        return usual().plusSeconds(
                (long) Math.ceil(road.driving().toSeconds() * spread * deviations(figures.driveSureness())));
    }
}
