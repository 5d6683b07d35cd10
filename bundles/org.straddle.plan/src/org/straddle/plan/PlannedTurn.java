package org.straddle.plan;

import java.util.Optional;

import org.straddle.check.Promise;
import org.straddle.model.Bird;
import org.straddle.model.Turn;
import org.straddle.sky.Window;
import org.straddle.worth.TurnChance;

/**
 * A turn of a proposal.
 *
 * @param bird        which bird
 * @param window      whole seconds within the pass, unless the turn was kept
 * @param chance      what it is to the chasers
 * @param gain        what the plan would lose in worth without this turn alone, in expected chasers served
 * @param kept        the turn of the event that this one is, when it is pinned or began before the plan does
 * @param continued   the turn of the event that this one takes the place of: same team, site and pass
 * @param restored    what was published and is no longer in the present plan, if this turn is just that
 * @param downlinkMhz where in a passband the team answers, MHz; 0 when nothing is agreed
 */
public record PlannedTurn(Bird bird, Window window, TurnChance chance, double gain, Optional<Turn> kept, Optional<Turn> continued,
        Optional<Promise> restored, double downlinkMhz) {

    public PlannedTurn(Bird bird, Window window, TurnChance chance, double gain, Optional<Turn> kept) {
        this(bird, window, chance, gain, kept, Optional.empty(), Optional.empty(), 0);
    }

    public PlannedTurn continuing(Turn before) {
        return new PlannedTurn(bird, window, chance, gain, kept, Optional.of(before), restored, downlinkMhz);
    }

    public PlannedTurn restoring(Promise published) {
        return new PlannedTurn(bird, window, chance, gain, kept, continued, Optional.of(published), downlinkMhz);
    }

    public PlannedTurn on(double agreedMhz) {
        return new PlannedTurn(bird, window, chance, gain, kept, continued, restored, agreedMhz);
    }

    /** The downlink that was agreed for what this turn keeps, continues or restores, MHz; 0 when none was. */
    public double agreedBeforeMhz() {
        return kept.or(() -> continued).map(Turn::getDownlinkMhz)
                .orElse(restored.map(Promise::downlinkMhz).orElse(0.0));
    }
}
