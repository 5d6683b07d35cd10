package org.straddle.ui.map;

import java.util.Optional;

import org.straddle.grid.Boundary;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.NearBoundary;

/**
 * A site that is being placed: nothing of the event changes until it is put down.
 *
 * @param siteId of the site that is moved; empty for a new one
 * @param from where it was, or where a new one was begun
 * @param at where it is now
 * @param on the line or corner that it was snapped to
 */
record Placing(Optional<String> siteId, GeoPosition from, GeoPosition at, Optional<Boundary> on) {

    /** A tenth of a millimetre on the ground: finer than any mark, and short in a file. */
    private static final double PER_DEGREE = 1e9;

    static Placing begin(Optional<String> siteId, GeoPosition at) {
        return new Placing(siteId, at, at, Optional.empty());
    }

    Placing to(GeoPosition place) {
        return new Placing(siteId, from, new GeoPosition(rounded(place.latitudeDeg()), rounded(place.longitudeDeg())),
                Optional.empty());
    }

    Placing snapped(NearBoundary near) {
        Placing there = to(near.foot());
        return new Placing(siteId, from, there.at, Optional.of(near.boundary()));
    }

    boolean isMoved() {
        return !from.equals(at);
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * PER_DEGREE) / PER_DEGREE;
    }
}
