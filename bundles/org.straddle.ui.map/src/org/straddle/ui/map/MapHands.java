package org.straddle.ui.map;

import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.atlas.mark.Nudge;
import org.straddle.atlas.mark.Snap;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.NearBoundary;

/** What keys, mouse and tools do on the map, in one place. */
final class MapHands {

    /** A place this near to a line or corner, pixels, is meant to be on it. */
    private static final double SNAP_PX = 9;

    private final MapCanvas map;
    private final Consumer<Optional<SiteSpot>> chosen;
    private final Consumer<SiteSpot> opened;
    private final Consumer<Placing> putDown;

    /**
     * @param chosen told of the site that the user selects, or of none
     * @param opened told of the site that the user wants to edit
     * @param putDown told of a site that was placed
     */
    MapHands(MapCanvas map, Consumer<Optional<SiteSpot>> chosen, Consumer<SiteSpot> opened, Consumer<Placing> putDown) {
        this.map = map;
        this.chosen = chosen;
        this.opened = opened;
        this.putDown = putDown;
    }

    MapCanvas map() {
        return map;
    }

    void choose(Optional<SiteSpot> site) {
        map.select(site.map(SiteSpot::id).orElse(null));
        site.ifPresent(one -> map.reveal(one.at()));
        chosen.accept(site);
    }

    void open() {
        map.selectedSite().ifPresent(opened);
    }

    void open(SiteSpot site) {
        opened.accept(site);
    }

    /** Begins to move the selected site. */
    void move() {
        map.selectedSite().ifPresent(site -> map.place(Placing.begin(Optional.of(site.id()), site.position())));
    }

    /** Begins to place a new site in the middle of the map. */
    void newSite() {
        map.placeAt(map.sight().width() / 2.0, map.sight().height() / 2.0).ifPresent(this::newSite);
    }

    void newSite(GeoPosition at) {
        map.place(Placing.begin(Optional.empty(), at).to(at));
    }

    void placeAt(GeoPosition at) {
        map.placing().ifPresent(placing -> map.place(placing.to(at)));
    }

    /** Places where the pointer is; near a line or a corner on it, unless the user holds that off. */
    void placeAt(double x, double y, boolean snapping) {
        map.placing().ifPresent(placing -> map.placeAt(x, y).ifPresent(at -> {
            Optional<NearBoundary> near = snapping ? Snap.toAny(at, map.groundM(SNAP_PX, at)) : Optional.empty();
            map.place(near.map(placing::snapped).orElseGet(() -> placing.to(at)));
        }));
    }

    void nudge(double northM, double eastM) {
        map.placing().ifPresent(placing -> map.place(placing.to(Nudge.of(placing.at(), northM, eastM))));
    }

    void snapToLine() {
        map.placing().ifPresent(placing -> Snap.toLine(placing.at(), Snap.FARTHEST_M)
                .ifPresent(near -> map.place(placing.snapped(near))));
    }

    void snapToCorner() {
        map.placing().ifPresent(placing -> Snap.toCorner(placing.at(), Snap.FARTHEST_M)
                .ifPresent(near -> map.place(placing.snapped(near))));
    }

    /** Ends the placing with a command. */
    void putDown() {
        map.placing().ifPresent(placing -> {
            map.place(null);
            putDown.accept(placing);
        });
    }

    /** Ends the placing with nothing changed. */
    void giveUp() {
        map.place(null);
    }
}
