package org.straddle.atlas.scene;

import org.straddle.atlas.plane.PlanePoint;
import org.straddle.grid.GeoPosition;

/** A base on the map. */
public record BaseSpot(String id, String name, GeoPosition position, PlanePoint at) {
}
