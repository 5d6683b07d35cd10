package org.straddle.grid;

/**
 * How near a candidate is to things of one role.
 *
 * @param role their role
 * @param distanceM to the nearest of them in metres, 0 inside an area
 * @param nearest what that is
 * @param points what it adds to the rank, or takes away
 */
public record Nearness(MapRole role, double distanceM, MapFeature nearest, double points) {
}
