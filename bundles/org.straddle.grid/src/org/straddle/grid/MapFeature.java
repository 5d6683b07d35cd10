package org.straddle.grid;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing on a map: a road, a power line, a building.
 *
 * @param name as the map gives it, may be empty
 * @param role what the map says it is, if it does
 * @param shape what the parts are
 * @param parts its points, its stretches, or the rings of its areas, outer ones and holes alike
 */
public record MapFeature(String name, Optional<MapRole> role, Shape shape, List<Trace> parts) {

    /** What the parts of a feature are. */
    public enum Shape {
        /** Each position for itself. */
        POINTS,
        /** Each part a line. */
        LINES,
        /** Each part a ring; inside is what an odd number of rings surround. */
        AREA
    }

    public MapFeature {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(shape, "shape");
        parts = List.copyOf(parts);
    }

    /** A line of its name without a role. */
    public static MapFeature line(String name, GeoPosition... positions) {
        return new MapFeature(name, Optional.empty(), Shape.LINES, List.of(Trace.of(positions)));
    }

    /** Number of positions in all parts. */
    public int size() {
        return parts.stream().mapToInt(Trace::size).sum();
    }
}
