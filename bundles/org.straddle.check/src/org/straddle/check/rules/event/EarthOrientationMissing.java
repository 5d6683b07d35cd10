package org.straddle.check.rules.event;

import java.time.Duration;
import java.time.Instant;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;

/**
 * Without Earth orientation data times are off by a tenth of a second at most. Next to element sets of a day or more
 * that is nothing, and is not found: only beside fresh ones does it count.
 */
public final class EarthOrientationMissing extends ScopedRule<Event> {

    /** It counts from this share of all that the time of a pass may be off. */
    private static final double SHARE = 0.25;

    /**
     * With an older element set it never does: an error of 1 km and 3 km a day makes more than three quarters of the
     * whole after 8 hours, at the 8 km/s of the lowest orbits. Asked first, because finding the pass of every turn takes long.
     */
    private static final Duration NEVER_FRESH = Duration.ofHours(12);

    public EarthOrientationMissing() {
        super(Scope.TURNS, CheckRule.EARTH_ORIENTATION_MISSING.id(), Severity.ADVICE);
    }

    @Override
    public void check(Event event, Inspection in, Consumer<Finding> findings) {
        Outlook outlook = in.outlook();
        if (!outlook.hasSpan() || outlook.orientation().isLoaded()) {
            return;
        }
        in.itinerary().turns().stream().filter(work -> counts(outlook, work)).findFirst()
                .ifPresent(work -> findings.accept(Finding.of(this, Statement.of("earthOrientationMissing.quarterMoreWhat",
                        "orientationNotice", outlook.orientationNotice().orElseThrow(), "turn", work), event)));
    }

    private static boolean counts(Outlook outlook, Work work) {
        return isFresh(outlook, work) && TurnPass.isKnown(outlook, work) && TurnPass.best(outlook, work).map(outlook::error)
                .filter(error -> error.orientationTimeS() >= SHARE * error.timeErrorS()).isPresent();
    }

    private static boolean isFresh(Outlook outlook, Work work) {
        Instant start = work.window().start();
        return outlook.elementSet(work.bird(), start).filter(set -> set.ageAt(start).abs().compareTo(NEVER_FRESH) < 0).isPresent();
    }
}
