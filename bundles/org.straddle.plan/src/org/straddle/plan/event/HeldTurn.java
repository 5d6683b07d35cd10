package org.straddle.plan.event;

import java.util.List;
import java.util.Optional;

import org.straddle.check.Promise;
import org.straddle.model.Turn;
import org.straddle.plan.problem.Commitment;

/**
 * A turn that a new plan should hold on to.
 *
 * @param turn      that of the present plan; empty when it was published and the plan departed from it since
 * @param published what the last revision says of it; empty when nobody was told of it
 * @param ways      how it can be worked still: the team's day, and the site's chance. None when it cannot be
 */
record HeldTurn(Optional<Turn> turn, Optional<Promise> published, List<Commitment> ways) {

    HeldTurn {
        ways = List.copyOf(ways);
    }
}
