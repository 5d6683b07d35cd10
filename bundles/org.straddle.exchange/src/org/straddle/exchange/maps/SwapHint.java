package org.straddle.exchange.maps;

import org.straddle.exchange.EventPlace;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapFeature;

/** Tells from the place of the event that a map gives its coordinates in the other order. */
public final class SwapHint {

    private SwapHint() {
    }

    /** True when the map begins far from the place, but near it with its coordinates swapped. */
    public static boolean seemsSwapped(MapFile map, GeoPosition near) {
        MapFeature first = map.features().get(0);
        GeoPosition position = first.parts().get(0).position(0);
        if (Math.abs(position.longitudeDeg()) > 90 || EventPlace.isNear(position, near)) {
            return false;
        }
        return EventPlace.isNear(new GeoPosition(position.longitudeDeg(), position.latitudeDeg()), near);
    }
}
