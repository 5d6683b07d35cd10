package org.straddle.plan;

import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

/**
 * A turn of a proposal.
 *
 * @param bird        which bird
 * @param window      whole seconds within the pass, unless the turn was kept
 * @param kept        the pinned turn of the event that this one is; empty for a new turn
 */
public record PlannedTurn(Bird bird, Window window, Optional<Turn> kept) {
}
