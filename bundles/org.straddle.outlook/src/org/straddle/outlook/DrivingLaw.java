package org.straddle.outlook;

import java.time.Duration;
import java.util.Collection;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;

/**
 * How long a team may drive where it goes: the shorter of what the event allows and of what the coordinator entered for the
 * countries that the places lie in. Rules, day sheet and planner all take it from here.
 *
 * @param limit      longest time at the wheel in one day
 * @param limitOf    the country whose limit it is; empty when it is the event's
 * @param breakAfter driving after which a break is due
 * @param breakOf    the country that asks for it; empty when the event does
 */
public record DrivingLaw(Duration limit, Optional<Jurisdiction> limitOf, Duration breakAfter, Optional<Jurisdiction> breakOf) {

    private static final double MINUTES_OF_DAY = 24 * 60;

    /** What a country allows. */
    private record Allowed(Duration time, Jurisdiction country) {
    }

    /** @param places sites and bases of a day or at the ends of a drive */
    static DrivingLaw of(Outlook outlook, Collection<? extends Identified> places) {
        PolicyFigures policies = outlook.policies();
        Optional<Allowed> limit = shortest(outlook, places, Jurisdiction::getDrivingLimitMinutes, policies.drivingLimit());
        Optional<Allowed> rest = shortest(outlook, places, Jurisdiction::getBreakAfterMinutes, policies.breakAfter());
        return new DrivingLaw(limit.map(Allowed::time).orElse(policies.drivingLimit()), limit.map(Allowed::country),
                rest.map(Allowed::time).orElse(policies.breakAfter()), rest.map(Allowed::country));
    }

    /** The first of the shortest that is shorter than what the event allows. Nobody entered what is no part of a day. */
    private static Optional<Allowed> shortest(Outlook outlook, Collection<? extends Identified> places,
            ToDoubleFunction<Jurisdiction> minutes, Duration events) {
        Allowed shortest = null;
        for (Identified place : places) {
            for (Jurisdiction country : outlook.jurisdictions(place)) {
                double entered = minutes.applyAsDouble(country);
                Duration time = Duration.ofSeconds((long) (entered * 60));
                if (entered >= 1 && entered <= MINUTES_OF_DAY && time.compareTo(shortest == null ? events : shortest.time) < 0) {
                    shortest = new Allowed(time, country);
                }
            }
        }
        return Optional.ofNullable(shortest);
    }

    /** How many breaks fall due before so much driving is over. */
    public long breaks(Duration driving) {
        return driving.isZero() ? 0 : (driving.toSeconds() - 1) / Math.max(1, breakAfter.toSeconds());
    }
}
