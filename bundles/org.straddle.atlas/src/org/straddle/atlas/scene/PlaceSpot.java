package org.straddle.atlas.scene;

import org.straddle.atlas.plane.PlanePoint;

/**
 * A place that was found along a road.
 *
 * @param rank from 1, the best
 */
public record PlaceSpot(int rank, PlanePoint at) {
}
