package org.straddle.outlook.itinerary;

import java.util.Optional;

import org.straddle.model.Access;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** When two turns of different teams on one bird meet: both at work and the bird above 0° at both sites. */
public final class SharedTurns {

    /** Room for one voice of some 3 kHz and for tuning; common practice, no source. A rounding error is allowed for. */
    private static final double LEAST_APART_KHZ = 5 + 1e-6;

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

    /** When two teams would use the one channel of a bird at once; empty for birds with room for several, and when they never do. */
    public static Optional<Window> onOneChannel(Outlook outlook, Work a, Work b) {
        return a.bird() == b.bird() && a.bird().getAccess() == Access.SINGLE_CHANNEL ? of(outlook, a, b) : Optional.empty();
    }

    /** When two teams would use frequencies of a passband at once that are too near to each other; empty when they never do. */
    public static Optional<Window> onSameFrequency(Outlook outlook, Work a, Work b) {
        return a.bird() == b.bird() && a.bird().getAccess() == Access.PASSBAND && agreedOnSame(a, b)
                ? of(outlook, a, b) : Optional.empty();
    }

    /** Whether both have agreed on a downlink, and these are too near to each other to be told apart. */
    public static boolean agreedOnSame(Work a, Work b) {
        return a.turn().getDownlinkMhz() > 0 && b.turn().getDownlinkMhz() > 0
                && isSame(a.turn().getDownlinkMhz(), b.turn().getDownlinkMhz());
    }

    /** Whether two frequencies, MHz, are too near to each other to be told apart. */
    public static boolean isSame(double oneMhz, double otherMhz) {
        return Math.abs(oneMhz - otherMhz) * 1000 <= LEAST_APART_KHZ;
    }
}
