package org.straddle.exchange;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.MapFeature;

/**
 * Whether a map seems to have latitude and longitude in the wrong order though both are in range, judged by a place
 * that it should be near.
 */
public final class SwapHint {

    /** A rove does not need a map of what is so far away. */
    private static final double FAR_M = 1_000_000;

    private SwapHint() {
    }

    /** True when the map begins far from the place, but near it with its coordinates swapped. */
    public static boolean seemsSwapped(MapFile map, GeoPosition near) {
        MapFeature first = map.features().get(0);
        GeoPosition position = first.parts().get(0).position(0);
        if (Math.abs(position.longitudeDeg()) > 90 || Geodesic.distanceM(position, near) < FAR_M) {
            return false;
        }
        return Geodesic.distanceM(new GeoPosition(position.longitudeDeg(), position.latitudeDeg()), near) < FAR_M;
    }
}
