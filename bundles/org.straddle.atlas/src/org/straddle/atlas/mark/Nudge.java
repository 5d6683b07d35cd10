package org.straddle.atlas.mark;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;

/** A small step over the ground. */
public final class Nudge {

    private Nudge() {
    }

    /**
     * The place so many metres to the north, and from there so many to the east, each along a geodesic; negative goes
     * south and west.
     */
    public static GeoPosition of(GeoPosition from, double northM, double eastM) {
        GeoPosition north = northM == 0 ? from : Geodesic.destination(from, 0, northM);
        return eastM == 0 ? north : Geodesic.destination(north, 90, eastM);
    }
}
