package org.straddle.safety.explain;

import java.time.Duration;

import org.straddle.model.Jurisdiction;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Duty;

/**
 * The longest time at the wheel on a day of a team: the shortest of what the event allows and of what the coordinator entered for
 * the countries of its stops.
 */
record DrivingRule(Duration limit) {

    static DrivingRule of(Outlook outlook, Duty duty) {
        return new DrivingRule(duty.stays().stream().flatMap(stay -> outlook.jurisdictions(stay.site()).stream())
                .map(Jurisdiction::getDrivingLimitMinutes).filter(minutes -> minutes >= 1 && minutes <= 24 * 60)
                .map(minutes -> Duration.ofMinutes((long) Math.floor(minutes))).filter(limit -> limit.compareTo(outlook.policies().drivingLimit()) < 0)
                .min(Duration::compareTo).orElse(outlook.policies().drivingLimit()));
    }
}
