package org.straddle.ui.map;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.grid.GeoPosition;

/**
 * The mouse on the map: drag moves the map, the wheel zooms at the pointer, a click selects. A site that is selected
 * already can be dragged; Alt holds off snapping, Esc takes the drag back.
 */
final class MapMouse {

    private static final int SLACK_PX = 4;
    private static final double WHEEL = 1.25;

    private final MapHands hands;
    private final MapCanvas map;
    private final Canvas canvas;
    private final Consumer<Optional<GeoPosition>> pointed;
    private boolean down;
    private boolean dragged;
    private boolean carries;
    private int lastX;
    private int lastY;

    /** @param pointed told of the place under the pointer */
    MapMouse(MapHands hands, Consumer<Optional<GeoPosition>> pointed) {
        this.hands = hands;
        this.map = hands.map();
        this.canvas = map.control();
        this.pointed = pointed;
        canvas.addListener(SWT.MouseDown, this::down);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, this::up);
        canvas.addListener(SWT.MouseDoubleClick, this::twice);
        canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
        canvas.addListener(SWT.MouseExit, event -> pointed.accept(Optional.empty()));
    }

    private void down(Event event) {
        canvas.setFocus();
        if (event.button == 1) {
            down = true;
            dragged = false;
            carries = map.placing().isPresent() || map.siteAt(event.x, event.y).map(SiteSpot::id)
                    .filter(id -> map.selectedSite().map(SiteSpot::id).filter(id::equals).isPresent()).isPresent();
            if (map.placing().isPresent()) {
                // A site in hand is carried only from where it is; beside it the map is moved.
                carries = map.plane().map(plane -> plane.put(map.placing().get().at())).filter(at -> Math.hypot(
                        map.sight().pxX(at) - event.x, map.sight().pxY(at) - event.y) < 3 * SLACK_PX).isPresent();
            }
            lastX = event.x;
            lastY = event.y;
        }
    }

    private void move(Event event) {
        pointed.accept(map.placeAt(event.x, event.y));
        if (!down) {
            boolean site = map.siteAt(event.x, event.y).isPresent();
            canvas.setCursor(site ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
            return;
        }
        if (!dragged && Math.hypot(event.x - lastX, event.y - lastY) < SLACK_PX) {
            return;
        }
        if (!dragged && carries && map.placing().isEmpty()) {
            hands.move();
        }
        dragged = true;
        if (carries && map.placing().isPresent()) {
            hands.placeAt(event.x, event.y, (event.stateMask & SWT.ALT) == 0);
        } else if (!carries) {
            map.pan(lastX - event.x, lastY - event.y);
        }
        lastX = event.x;
        lastY = event.y;
    }

    private void up(Event event) {
        if (event.button != 1 || !down) {
            return;
        }
        down = false;
        if (dragged && carries) {
            map.placing().filter(placing -> placing.siteId().isPresent()).ifPresent(placing -> hands.putDown());
        } else if (!dragged && map.placing().isPresent()) {
            hands.placeAt(event.x, event.y, (event.stateMask & SWT.ALT) == 0);
        } else if (!dragged) {
            Optional<SiteSpot> site = map.siteAt(event.x, event.y);
            if (site.isPresent() || !map.found().chooseAt(event.x, event.y)) {
                hands.choose(site);
            }
        }
    }

    private void twice(Event event) {
        if (event.button == 1) {
            down = false;
            if (map.placing().isPresent()) {
                hands.putDown();
            } else {
                map.siteAt(event.x, event.y).ifPresent(hands::open);
            }
        }
    }

    private void wheel(Event event) {
        if (event.count != 0) {
            map.look(map.sight().zoomed(Math.pow(WHEEL, Math.signum(event.count)), event.x, event.y));
            event.doit = false;
        }
    }
}
