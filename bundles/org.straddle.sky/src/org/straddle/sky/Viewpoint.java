package org.straddle.sky;

import java.util.Objects;

/** A place with what the ground around it hides: all that a pass depends on besides the bird. */
public record Viewpoint(Place place, Horizon horizon) {

    public Viewpoint {
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(horizon, "horizon");
    }

    /** 2^64 divided by the golden ratio, as Fibonacci hashing takes it (Knuth, TAOCP 3, 6.4). */
    private static final long STIR = 0x9E3779B97F4A7C15L;

    /** Of the place alone: a mask is long. Stirred, because round positions have few bits and would fall together. */
    @Override
    public int hashCode() {
        long bits = (Double.doubleToLongBits(place.latitudeDeg()) * STIR + Double.doubleToLongBits(place.longitudeDeg())) * STIR;
        return (int) (bits >>> 32);
    }
}
