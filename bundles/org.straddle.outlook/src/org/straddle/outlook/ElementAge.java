package org.straddle.outlook;

import java.time.Duration;
import java.time.Instant;

import org.straddle.model.Bird;
import org.straddle.model.Figures;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.sky.ElementSet;

/**
 * How far a time is from the epoch of the element set that is used for it, and how far it may be. Low orbits change faster,
 * because the air is denser there: below {@value #LOW_KM} km a shorter limit holds. The limits are ours.
 */
public final class ElementAge {

    /** Mean height of an orbit, kilometres. Common practice, no source. */
    public static final double LOW_KM = 600;

    private ElementAge() {
    }

    /** Zero without an element set. */
    public static Duration of(Outlook outlook, Bird bird, Instant instant) {
        return outlook.elementSet(bird, instant).map(set -> set.ageAt(instant).abs()).orElse(Duration.ZERO);
    }

    public static boolean isTooOld(Outlook outlook, Bird bird, Instant instant) {
        return of(outlook, bird, instant).compareTo(limit(outlook, bird, instant)) > 0;
    }

    public static boolean isLow(Outlook outlook, Bird bird, Instant instant) {
        return outlook.elementSet(bird, instant).filter(ElementAge::isLow).isPresent();
    }

    private static boolean isLow(ElementSet set) {
        return (set.perigeeAltitudeKm() + set.apogeeAltitudeKm()) / 2 < LOW_KM;
    }

    /** The limit of the event for this orbit, the shorter of two for a low one. */
    public static Duration limit(Outlook outlook, Bird bird, Instant instant) {
        Duration usual = outlook.policies().elementSetAgeLimit();
        if (!isLow(outlook, bird, instant)) {
            return usual;
        }
        Duration low = Figures.of(outlook.event().getPolicies()).days(Literals.POLICIES__LOW_ELEMENT_SET_AGE_LIMIT_DAYS);
        return low.compareTo(usual) < 0 ? low : usual;
    }
}
