package org.straddle.sky.prediction;

import java.time.Instant;
import java.util.List;

import org.straddle.sky.Pass;

/**
 * How a bird shows itself above one horizon mask in one window. A list of passes alone would not
 * tell a bird that never rises from one whose orbit is over.
 */
public sealed interface Visibility {

    /** The passes, in order; empty when there are none. */
    List<Pass> passes();

    /** The usual case: it rises or sets at least once. */
    record RisesAndSets(List<Pass> passes) implements Visibility {
        public RisesAndSets {
            passes = kept(passes);
        }
    }

    /** Above the mask through the whole window, as a geostationary bird may be: one pass, cut at both ends. */
    record UpThroughout(Pass pass) implements Visibility {
        @Override
        public List<Pass> passes() {
            return List.of(pass);
        }
    }

    /**
     * Never above the mask.
     *
     * @param highestDeg the highest elevation it reaches in the window, degrees, mask or not
     */
    record DownThroughout(double highestDeg) implements Visibility {
        @Override
        public List<Pass> passes() {
            return List.of();
        }
    }

    /**
     * The element set leads the bird into the atmosphere, or the model gives up, within the window:
     * nothing is known from then on.
     *
     * @param from   the instant from which there is no prediction
     * @param passes those before
     * @param reason a sentence for the user
     */
    record Decayed(Instant from, List<Pass> passes, String reason) implements Visibility {
        public Decayed {
            passes = kept(passes);
        }
    }

    /** The list itself when nobody can change it, else a copy. */
    private static List<Pass> kept(List<Pass> passes) {
        return passes instanceof PassList ? passes : List.copyOf(passes);
    }
}
