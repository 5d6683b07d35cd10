package org.straddle.atlas.scene;

import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.PlanePoint;

/**
 * A region where chasers live.
 *
 * @param inside a place well within it
 * @param share  of all chasers, 0 to 1
 */
public record RegionShape(Outline outline, PlanePoint inside, double share) {
}
