package org.straddle.grid;

import java.util.List;
import java.util.Optional;

/**
 * A candidate with what it is worth.
 *
 * @param candidate the place
 * @param demand sum of the demand of its squares, 0 to 4
 * @param near what is near it, for each role the nearest thing within reach
 * @param points demand, less a point for each kilometre to walk to the corner, and the points of what is near
 */
public record RankedCandidate(Candidate candidate, double demand, List<Nearness> near, double points) {

    public RankedCandidate {
        near = List.copyOf(near);
    }

    public Optional<Nearness> near(MapRole role) {
        return near.stream().filter(n -> n.role().equals(role)).findFirst();
    }
}
