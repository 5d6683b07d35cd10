package org.straddle.atlas.scene;

import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.grid.Square;

/**
 * A square that chasers still need.
 *
 * @param share of all chasers, 0 to 1
 * @param outline the square on the plane
 * @param middle where its number stands
 */
public record DemandSpot(Square square, double share, Outline outline, PlanePoint middle) {
}
