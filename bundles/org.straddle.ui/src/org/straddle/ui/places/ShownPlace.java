package org.straddle.ui.places;

import java.util.Objects;

import org.straddle.grid.RankedCandidate;

/**
 * One of the places that were found along roads, as views show it.
 *
 * @param rank      from 1, the best
 * @param candidate where it is, which squares meet there, and what it is worth
 */
public record ShownPlace(int rank, RankedCandidate candidate) {

    public ShownPlace {
        Objects.requireNonNull(candidate, "candidate");
    }
}
