package org.straddle.check.rules;

import java.util.Optional;

import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** When two turns of different teams on one bird meet: both at work and the bird above 0° at both sites. */
public final class SharedTurns {

    private SharedTurns() {
    }

    /** The first stretch of time in which they meet; empty when they never do. */
    public static Optional<Window> of(Outlook outlook, Work a, Work b) {
        if (a.team() == b.team()) {
            return Optional.empty();
        }
        return a.window().intersection(b.window()).flatMap(
                both -> outlook.sharedFootprint(a.bird(), both, a.site(), b.site()).stream().findFirst());
    }
}
