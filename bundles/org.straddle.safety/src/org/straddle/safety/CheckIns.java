package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.straddle.model.Figures;
import org.straddle.model.Policies;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.sky.Window;

/**
 * When a team that stays at a site calls: on arrival, then never later than the event allows, and before it leaves. When
 * a call does not come, somebody acts in a minute that is known beforehand.
 *
 * @param times whole minutes, in order
 * @param grace how long after a missed call the coordinator acts
 */
public record CheckIns(List<Instant> times, Duration grace) {

    /** Two calls within this time are one. */
    private static final Duration CLOSE = Duration.ofMinutes(10);

    public CheckIns {
        times = List.copyOf(times);
    }

    public static CheckIns of(Window stay, Policies policies) {
        Duration apart = minutes(policies, Literals.POLICIES__CHECK_IN_MINUTES);
        List<Instant> times = new ArrayList<>();
        Instant leaving = stay.end().truncatedTo(ChronoUnit.MINUTES);
        for (Instant at = stay.start().truncatedTo(ChronoUnit.MINUTES); at.isBefore(leaving.minus(times.isEmpty() ? Duration.ZERO : CLOSE));
                at = at.plus(apart)) {
            times.add(at);
        }
        times.add(leaving);
        return new CheckIns(times, minutes(policies, Literals.POLICIES__MISSED_CHECK_IN_MINUTES));
    }

    private static Duration minutes(Policies policies, EAttribute figure) {
        return Figures.of(policies).minutes(figure).truncatedTo(ChronoUnit.MINUTES);
    }

    /** When the coordinator acts if the call of this time did not come. */
    public Instant actAt(Instant time) {
        return time.plus(grace);
    }
}
