package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Envelope;
import org.straddle.atlas.picture.Glyphs;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.MapPicture;
import org.straddle.atlas.picture.Shown;
import org.straddle.atlas.picture.Sight;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Frame;
import org.straddle.grid.GeoPosition;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/**
 * The map on the screen. Moving and zooming only change the sight and copy the image that is there; a new image is
 * laid out in the background and drawn in slices (see {@link Backdrop}).
 */
final class MapCanvas {

    private static final Catalogue TEXTS = Catalogue.of(MapCanvas.class);

    /** Of the image around the window, so that a drag shows what is there already. */
    private static final int MARGIN_PX = 200;
    private static final long SLICE_NS = 5_000_000;
    private static final int NEXT_SLICE_MS = 2;
    private static final double LEAST_FIT_M_PER_PX = 2;
    private static final double HIT_PX = 5;

    private final Canvas canvas;
    private final ScreenLetters letters;
    private final Backdrop backdrop;
    private final Overlay overlay;
    private final FoundPlaces found;
    private final NewestJob<MapPicture> pictures;
    private final Runnable slice = this::slice;
    private final List<Runnable> listeners = new ArrayList<>();
    private MapContents contents;
    private Plane fittedTo;
    private Shown shown = Shown.EVERYTHING;
    private Sight sight = new Sight(0, 0, 1000, 1, 1);
    private Sight asked;
    private Sight fitted;
    private boolean userMoved;
    private String selected;
    private Placing placing;
    private String note = "";

    MapCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        letters = new ScreenLetters(canvas, 0.92);
        backdrop = new Backdrop(canvas.getDisplay(), letters);
        overlay = new Overlay(this);
        found = new FoundPlaces(this);
        pictures = new NewestJob<>(canvas.getDisplay(), new NewestJob.Kind(
                TEXTS.text("mapCanvas.pictureMap"), false, Job.SHORT,
                TEXTS.text("mapCanvas.mapCouldNot")));
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> resized());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.addDisposeListener(event -> {
            pictures.stop();
            backdrop.forget();
        });
    }

    Canvas control() {
        return canvas;
    }

    FoundPlaces found() {
        return found;
    }

    ScreenLetters letters() {
        return letters;
    }

    Sight sight() {
        return sight;
    }

    Shown shown() {
        return shown;
    }

    Optional<MapContents> contents() {
        return Optional.ofNullable(contents);
    }

    Optional<Plane> plane() {
        return contents().map(known -> known.projector().plane());
    }

    /** Told whenever the sight, the selection, what is placed or what is on the map has changed. */
    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Shows other contents. On a plane that is new the whole event comes into sight. */
    void show(MapContents newest) {
        Plane plane = newest.projector().plane();
        boolean otherPlane = contents == null || !contents.projector().plane().equals(plane);
        contents = newest;
        if (otherPlane) {
            backdrop.forget();
            fittedTo = null;
            placing = null;
            userMoved = false;
        }
        boolean hasPlaces = !newest.scene().box().isNull();
        if (!userMoved && (fittedTo == null || hasPlaces)) {
            fittedTo = plane;
            sight = hasPlaces ? sight.fitting(newest.scene().box(), LEAST_FIT_M_PER_PX).within(plane.rimM())
                    : new Sight(0, 0, 2.1 * plane.rimM() / Math.max(1, Math.min(sight.width(), sight.height())), sight.width(),
                            sight.height()).within(plane.rimM());
            fitted = sight;
            userMoved = hasPlaces;
        }
        if (selected != null && newest.scene().site(selected).isEmpty() && !newest.scene().sites().isEmpty()) {
            selected = null;
        }
        ask();
        changed();
    }

    void clear() {
        contents = null;
        selected = null;
        placing = null;
        userMoved = false;
        fittedTo = null;
        pictures.stop();
        backdrop.forget();
        canvas.redraw();
    }

    /** A word in the corner; empty for none. */
    void note(String words) {
        if (!note.equals(words)) {
            note = words;
            canvas.redraw();
        }
    }

    String note() {
        return note;
    }

    void show(Shown newest) {
        shown = newest;
        ask();
        changed();
    }

    // The sight.

    void look(Sight wished) {
        if (contents == null) {
            return;
        }
        sight = wished.within(contents.projector().plane().rimM());
        userMoved = true;
        if (needsPicture()) {
            ask();
        }
        changed();
    }

    void pan(double pxX, double pxY) {
        look(sight.moved(pxX, pxY));
    }

    /** Larger or smaller around the middle, or around what is being placed or selected if that is in sight. */
    void zoom(double factor) {
        Optional<PlanePoint> held = placing != null ? plane().map(plane -> plane.put(placing.at()))
                : selectedSite().map(SiteSpot::at);
        double x = held.map(sight::pxX).orElse(-1.0);
        double y = held.map(sight::pxY).orElse(-1.0);
        boolean seen = sight.frame().contains(x, y);
        look(sight.zoomed(factor, seen ? x : sight.width() / 2.0, seen ? y : sight.height() / 2.0));
    }

    void fitAll() {
        contents().ifPresent(known -> {
            Envelope box = known.scene().box();
            if (!box.isNull()) {
                look(sight.fitting(box, LEAST_FIT_M_PER_PX));
            }
        });
    }

    /** The selected site with its surroundings, or the reach of the pass when no site is selected. */
    void fitSelection() {
        selectedSite().ifPresentOrElse(site -> look(sight.centredOn(site.at()).fitting(around(site.at(), 2500), 1)),
                () -> contents().flatMap(MapContents::reach).ifPresent(reach -> {
                    Envelope box = new Envelope();
                    reach.ever().forEach(ring -> {
                        for (int i = 0; i < ring.length; i += 2) {
                            box.expandToInclude(ring[i], ring[i + 1]);
                        }
                    });
                    look(sight.fitting(box, LEAST_FIT_M_PER_PX));
                }));
    }

    void goTo(GeoPosition place) {
        plane().ifPresent(plane -> {
            PlanePoint at = plane.put(place);
            look(sight.metresPerPx() > 60 ? sight.centredOn(at).fitting(around(at, 10_000), 1) : sight.centredOn(at));
        });
    }

    private static Envelope around(PlanePoint at, double metres) {
        return new Envelope(at.x() - metres, at.x() + metres, at.y() - metres, at.y() + metres);
    }

    /** The place under a pixel; empty off the map. */
    Optional<GeoPosition> placeAt(double x, double y) {
        PlanePoint at = sight.at(x, y);
        return plane().filter(plane -> Math.hypot(at.x(), at.y()) < plane.rimM()).map(plane -> plane.position(at.x(), at.y()));
    }

    /** Metres on the ground for so many pixels around a place. */
    double groundM(double px, GeoPosition around) {
        return px * sight.metresPerPx() / plane().map(plane -> plane.scaleAt(around)).orElse(1.0);
    }

    // Sites.

    List<SiteSpot> sites() {
        return contents().map(known -> known.scene().sites()).orElse(List.of());
    }

    Optional<SiteSpot> selectedSite() {
        return contents().filter(known -> selected != null).flatMap(known -> known.scene().site(selected));
    }

    /** @param id of a site, or null for none */
    void select(String id) {
        if (!Objects.equals(selected, id)) {
            selected = id;
            changed();
        }
    }

    /** Brings a place into sight without changing the scale. */
    void reveal(PlanePoint at) {
        if (!sight.frame().grown(-30).contains(sight.pxX(at), sight.pxY(at))) {
            look(sight.centredOn(at));
        }
    }

    /** The site whose drawing is under a pixel, the nearest of several. */
    Optional<SiteSpot> siteAt(double x, double y) {
        SiteSpot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (SiteSpot site : sites()) {
            double siteX = sight.pxX(site.at());
            double siteY = sight.pxY(site.at());
            Frame box = Glyphs.box(site.kind(), siteX, siteY, 1).grown(HIT_PX);
            double distance = Math.hypot(x - siteX, y - siteY);
            if (box.contains(x, y) && distance < least) {
                best = site;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    Optional<Placing> placing() {
        return Optional.ofNullable(placing);
    }

    /** @param now null when nothing is being placed any more */
    void place(Placing now) {
        placing = now;
        if (now != null) {
            plane().ifPresent(plane -> reveal(plane.put(now.at())));
        }
        changed();
    }

    // Drawing.

    /** A picture of the same map in another size, for a file; to be called off the UI thread or on it. */
    MapPicture picture(Sight wished) {
        return MapPicture.of(contents, wished, shown, letters, null);
    }

    private void changed() {
        canvas.redraw();
        listeners.forEach(Runnable::run);
    }

    private void resized() {
        Point size = canvas.getSize();
        // What was fitted to the window goes on fitting it until the user moves the map.
        userMoved &= !sight.equals(fitted);
        sight = sight.sized(size.x, size.y);
        if (contents != null && !userMoved) {
            show(contents);
        } else if (needsPicture()) {
            ask();
        }
        canvas.redraw();
    }

    /** Whether what is asked for, or was, does not cover the window at this scale. */
    private boolean needsPicture() {
        return asked == null || asked.metresPerPx() != sight.metresPerPx()
                || !asked.box().contains(sight.withMargin(MARGIN_PX / 3).box());
    }

    private void ask() {
        if (contents == null || sight.width() < 2) {
            return;
        }
        Sight wanted = sight.withMargin(MARGIN_PX);
        MapContents from = contents;
        Shown parts = shown;
        asked = wanted;
        pictures.run(monitor -> MapPicture.of(from, wanted, parts, letters, monitor), picture -> {
            if (!canvas.isDisposed()) {
                backdrop.draw(picture);
                slice();
            }
        }, failure -> { });
    }

    /** Whether what is on the screen is what was asked for last. */
    boolean isSharp() {
        return !pictures.isRunning() && !backdrop.isDrawing();
    }

    private void slice() {
        if (canvas.isDisposed()) {
            return;
        }
        if (backdrop.drawFor(SLICE_NS)) {
            canvas.redraw();
        }
        if (backdrop.isDrawing()) {
            canvas.getDisplay().timerExec(NEXT_SLICE_MS, slice);
        }
    }

    private void paint(GC gc) {
        Rectangle all = canvas.getClientArea();
        gc.setBackground(canvas.getDisplay().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND));
        boolean covered = contents != null && backdrop.sight().filter(seen -> seen.metresPerPx() == sight.metresPerPx()
                && seen.box().contains(sight.box())).isPresent();
        if (!covered) {
            gc.fillRectangle(all);
        }
        if (contents != null) {
            backdrop.paint(gc, sight);
            overlay.paint(gc);
        }
    }
}
