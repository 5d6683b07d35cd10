package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;

/** The pass that a turn works. */
public final class TurnPass {

    /** Passes are computed to well below a second, but people write down whole seconds. */
    private static final Duration GRACE = Duration.ofSeconds(1);

    private TurnPass() {
    }

    /** Whether passes are known at all: the site has a position, the bird elements, and the turn lies in the event. */
    public static boolean isKnown(Outlook outlook, Work work) {
        return outlook.hasSpan() && outlook.span().contains(work.window()) && outlook.isPlaced(work.site())
                && outlook.elementSet(work.bird(), work.window().start()).isPresent();
    }

    /** The pass that shares most time with the turn; empty when none does. */
    public static Optional<Pass> best(Outlook outlook, Work work) {
        return outlook.passes(work.site(), work.bird()).stream().map(SitePass::pass)
                .filter(pass -> pass.window().overlaps(work.window()))
                .max(Comparator.comparing((Pass pass) -> pass.window().intersection(work.window()).orElseThrow()
                        .duration()));
    }

    /** Whether it is known that the bird is not up at any time of the turn. */
    public static boolean isMissing(Outlook outlook, Work work) {
        return isKnown(outlook, work) && best(outlook, work).isEmpty();
    }

    /** The pass that a turn begins before or ends after; empty when the turn lies within one, or none is known. */
    public static Optional<Window> left(Outlook outlook, Work work) {
        return isKnown(outlook, work)
                ? best(outlook, work).map(Pass::window).filter(pass -> !contains(pass, work.window())) : Optional.empty();
    }

    public static boolean contains(Window pass, Window turn) {
        return new Window(pass.start().minus(GRACE), pass.end().plus(GRACE)).contains(turn);
    }
}
