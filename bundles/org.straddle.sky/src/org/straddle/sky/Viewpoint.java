package org.straddle.sky;

import java.util.Objects;

/** A place with what the ground around it hides: all that a pass depends on besides the bird. */
public record Viewpoint(Place place, Horizon horizon) {

    public Viewpoint {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(horizon, "horizon");
    }
}
