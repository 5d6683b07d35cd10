package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/**
 * Without Earth orientation data times are off by a tenth of a second at most. Next to element sets of a day or more
 * that is nothing, and is not found: only beside fresh ones does it count.
 */
final class EarthOrientationMissing extends NamedRule {

    /** It counts from this share of all that the time of a pass may be off. */
    private static final double SHARE = 0.25;

    EarthOrientationMissing() {
        super("earth-orientation-missing", Severity.ADVICE, "Times rest on how the Earth really turns");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        if (!outlook.hasSpan() || outlook.orientation().isLoaded()) {
            return;
        }
        Itinerary.of(outlook.event()).turns().stream().filter(work -> counts(outlook, work)).findFirst()
                .ifPresent(work -> findings.accept(Finding.of(this, outlook.orientationNotice().orElseThrow()
                        + " That is a quarter or more of what the time of " + new Words(outlook.zone()).turn(work)
                        + " may be off, because its element set is fresh. Import finals2000A or eopc04 as the IERS"
                        + " publishes them.", outlook.event())));
    }

    private static boolean counts(Outlook outlook, Work work) {
        return TurnPass.isKnown(outlook, work) && TurnPass.best(outlook, work).map(outlook::error)
                .filter(error -> error.orientationTimeS() >= SHARE * error.timeErrorS()).isPresent();
    }
}
