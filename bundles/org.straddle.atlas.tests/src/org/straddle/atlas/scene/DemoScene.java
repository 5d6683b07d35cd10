package org.straddle.atlas.scene;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

import org.straddle.atlas.layer.BaseMap;
import org.straddle.atlas.layer.LaidBaseMap;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.Projector;
import org.straddle.demo.DemoEvent;
import org.straddle.outlook.Outlook;

/** The demo event on its plane. */
public final class DemoScene {

    static final Outlook OUTLOOK = Outlook.of(DemoEvent.create(), null);
    static final Projector PROJECTOR = new Projector(Plane.about(EventCentre.of(OUTLOOK).orElseThrow()));

    private DemoScene() {
    }

    public static MapContents contents() {
        LaidGrid grid = new LaidGrid(PROJECTOR);
        try {
            return new MapContents(PROJECTOR, grid, Optional.of(LaidBaseMap.of(BaseMap.load(null), PROJECTOR)), List.of(),
                    EventScene.of(OUTLOOK, PROJECTOR, grid, Look.PLAIN, null), Optional.empty(), List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
