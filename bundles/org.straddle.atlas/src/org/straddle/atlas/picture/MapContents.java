package org.straddle.atlas.picture;

import java.util.List;
import java.util.Optional;

import org.straddle.atlas.layer.LaidBaseMap;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.plane.Projector;
import org.straddle.atlas.scene.EventScene;
import org.straddle.atlas.scene.PlaceSpot;
import org.straddle.atlas.scene.ReachShape;

/**
 * All that a map can show, laid on one plane. What is still loading is left out.
 *
 * @param baseMap empty while it loads
 * @param reach of the pass that is looked at
 * @param places that were found along roads, best first
 */
public record MapContents(Projector projector, LaidGrid grid, Optional<LaidBaseMap> baseMap, List<UserLayer.Laid> layers,
        EventScene scene, Optional<ReachShape> reach, List<PlaceSpot> places) {

    public MapContents {
        layers = List.copyOf(layers);
        places = List.copyOf(places);
    }

    /** A plane without anything on it. */
    public static MapContents empty(Projector projector) {
        return new MapContents(projector, new LaidGrid(projector), Optional.empty(), List.of(), EventScene.EMPTY,
                Optional.empty(), List.of());
    }

    public MapContents with(LaidBaseMap loaded) {
        return new MapContents(projector, grid, Optional.of(loaded), layers, scene, reach, places);
    }

    public MapContents with(List<UserLayer.Laid> loaded) {
        return new MapContents(projector, grid, baseMap, loaded, scene, reach, places);
    }

    public MapContents with(EventScene newer) {
        return new MapContents(projector, grid, baseMap, layers, newer, reach, places);
    }

    public MapContents with(Optional<ReachShape> newer) {
        return new MapContents(projector, grid, baseMap, layers, scene, newer, places);
    }

    public MapContents withPlaces(List<PlaceSpot> found) {
        return new MapContents(projector, grid, baseMap, layers, scene, reach, found);
    }
}
