package org.straddle.outlook.itinerary;

import java.util.Collection;
import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Link;

/** A place in a passband that nobody near it in time has. */
public final class FreeDownlink {

    /** A whole kilohertz above the distance that collides, which leaves half of one for rounding. */
    private static final double STEP_MHZ = 0.006;

    private FreeDownlink() {
    }

    /**
     * What was agreed, if it keeps clear of all others; or else the frequency within the bird's downlink that does and is
     * nearest to it, or to the middle of the passband.
     *
     * @param taken  frequencies that are in use at the same time, MHz
     * @param agreed MHz; 0 when nothing is
     * @return MHz, a new one in whole kilohertz, as frequencies are shown and published; empty when there is no room, or nothing is agreed and the bird's downlink is not known
     */
    public static OptionalDouble of(Collection<Double> taken, Bird bird, double agreed) {
        Link band = bird.getDownlink();
        boolean isWide = band != null && band.getHighMhz() > band.getLowMhz();
        if (!(agreed > 0) && !isWide) {
            return OptionalDouble.empty();
        }
        if (agreed > 0 && taken.stream().noneMatch(other -> SharedTurns.isSame(agreed, other))) {
            return OptionalDouble.of(agreed);
        }
        double wish = agreed > 0 ? agreed : (band.getLowMhz() + band.getHighMhz()) / 2;
        return Stream.concat(Stream.of(wish), taken.stream().flatMap(mhz -> Stream.of(mhz - STEP_MHZ, mhz + STEP_MHZ)))
                .map(mhz -> Math.round(mhz * 1e3) / 1e3)
                .filter(mhz -> !isWide || band.getLowMhz() <= mhz && mhz <= band.getHighMhz())
                .filter(mhz -> taken.stream().noneMatch(other -> SharedTurns.isSame(mhz, other)))
                .min(Comparator.comparing((Double mhz) -> Math.abs(mhz - wish)).thenComparing(Comparator.naturalOrder()))
                .map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
