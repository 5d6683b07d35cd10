package org.straddle.ui.sky.pass;

import java.util.List;

/** A stretch of a pass that is drawn in one way; it shares its end points with its neighbours. */
public record ArcPiece(Light light, List<ArcPoint> points) {

    public ArcPiece {
        points = List.copyOf(points);
    }
}
