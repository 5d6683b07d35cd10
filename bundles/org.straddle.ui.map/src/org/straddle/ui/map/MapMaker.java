package org.straddle.ui.map;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.straddle.atlas.layer.BaseMap;
import org.straddle.atlas.layer.LaidBaseMap;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.Projector;
import org.straddle.atlas.scene.EventCentre;
import org.straddle.atlas.scene.EventScene;
import org.straddle.atlas.scene.PlaceSpot;
import org.straddle.atlas.scene.ReachShape;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.grid.GeoPosition;
import org.straddle.outlook.SitePass;
import org.straddle.ui.places.ShownPlace;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.NewestJob;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * Brings together what is on the map, part by part as it is loaded or computed in the background: nothing waits for
 * anything else, and the map shows what is there. UI thread only.
 */
final class MapMaker {

    private static final Catalogue TEXTS = Catalogue.of(MapMaker.class);

    private static BaseMap baseMap;

    private final Runnable changed;
    private final LayerFiles files = new LayerFiles();
    private final NewestJob<LaidBaseMap> baseMapWork;
    private final NewestJob<LayerFiles.Answer> layerWork;
    private final NewestJob<EventScene> sceneWork;
    private final NewestJob<ReachShape> reachWork;
    private MapContents contents;
    private Computed computed;
    private Map<String, LayerSource> sources = Map.of();
    private GeoPosition wishedCentre;
    private SitePass pass;
    private List<ShownPlace> places = List.of();
    private Map<String, String> refused = new TreeMap<>();

    /** @param changed told after {@link #contents()} has changed */
    MapMaker(Display display, Runnable changed) {
        this.changed = changed;
        baseMapWork = work(TEXTS.text("mapMaker.baseMap"), display, false);
        layerWork = work(TEXTS.text("layerFiles.mapLayers"), display, true);
        sceneWork = work(TEXTS.text("mapMaker.map"), display, false);
        reachWork = work(TEXTS.text("mapMaker.reachMap"), display, false);
    }

    private static <T> NewestJob<T> work(String name, Display display, boolean isShown) {
        return new NewestJob<>(display, new NewestJob.Kind(name, isShown, Job.SHORT, TEXTS.text("mapMaker.notShown", "work", name)));
    }

    /** Empty while no event is shown. */
    Optional<MapContents> contents() {
        return Optional.ofNullable(contents);
    }

    Optional<Computed> computed() {
        return Optional.ofNullable(computed);
    }

    /** Files of layers that cannot be shown, with the reason and what to do. */
    Map<String, String> refused() {
        return refused;
    }

    boolean isLoading() {
        return baseMapWork.isRunning() || layerWork.isRunning() || sceneWork.isRunning();
    }

    /** What is being loaded, for the corner of the map; empty for nothing. */
    String loading() {
        return layerWork.isRunning() ? TEXTS.text("mapMaker.loadingLayers") : baseMapWork.isRunning()
                ? TEXTS.text("mapMaker.loadingBaseMap")
                : sceneWork.isRunning() ? TEXTS.text("mapMaker.drawing") : "";
    }

    void show(Computed newest) {
        computed = newest;
        Plane plane = plane(newest);
        if (contents == null || !contents.projector().plane().equals(plane)) {
            lay(plane);
        }
        readScene();
        if (pass != null) {
            choose(Optional.of(pass));
        }
    }

    /** Shows these layers; those that are known already are not read again. */
    void layers(List<LayerSource> newest) {
        Map<String, LayerSource> named = LayerFiles.named(newest);
        boolean same = named.equals(sources);
        boolean read = !LayerFiles.contents(named).equals(LayerFiles.contents(sources));
        sources = named;
        if (contents != null && read) {
            readLayers();
        } else if (contents != null && !same) {
            changed.run();
        }
    }

    /** The layers by the names they bear on the map. */
    Map<String, LayerSource> sources() {
        return sources;
    }

    private void readLayers() {
        Projector projector = contents.projector();
        Map<String, LayerSource> wanted = sources;
        layerWork.run(monitor -> files.read(wanted, projector, monitor), answer -> {
            refused = new TreeMap<>(answer.refused());
            contents = contents.with(answer.layers());
            changed.run();
        }, failure -> failed(TEXTS.text("layerFiles.mapLayers"), failure));
        changed.run();
    }

    /** Shows whom a pass reaches, or nobody's reach. */
    void choose(Optional<SitePass> chosen) {
        pass = chosen.orElse(null);
        if (contents == null || computed == null || pass == null) {
            reachWork.stop();
            if (contents != null) {
                contents = contents.with(Optional.empty());
                changed.run();
            }
            return;
        }
        Computed from = computed;
        Plane plane = contents.projector().plane();
        Optional<SitePass> known = Passes.same(from.outlook(), pass);
        if (known.isEmpty()) {
            choose(Optional.empty());
            return;
        }
        reachWork.run(monitor -> ReachShape.of(from.outlook(), known.get(), plane, monitor), reach -> {
            contents = contents.with(Optional.of(reach));
            changed.run();
        }, failure -> failed(TEXTS.text("mapMaker.reachMap"), failure));
    }

    Optional<SitePass> pass() {
        return Optional.ofNullable(pass);
    }

    /** Shows the places that were found along roads, best first. */
    void places(List<ShownPlace> found) {
        places = found;
        if (contents != null) {
            contents = withPlaces(contents);
            changed.run();
        }
    }

    private MapContents withPlaces(MapContents on) {
        Plane plane = on.projector().plane();
        return on.withPlaces(places.stream().map(place ->
                new PlaceSpot(place.rank(), plane.put(place.candidate().candidate().position()))).toList());
    }

    /** Centres the plane on a place instead of the event; empty goes back to the event. */
    void centre(Optional<GeoPosition> wished) {
        wishedCentre = wished.orElse(null);
        if (computed != null) {
            show(computed);
        }
    }

    void forget() {
        baseMapWork.stop();
        layerWork.stop();
        sceneWork.stop();
        reachWork.stop();
        contents = null;
        computed = null;
        sources = Map.of();
        wishedCentre = null;
        pass = null;
        refused = new TreeMap<>();
    }

    private Plane plane(Computed newest) {
        GeoPosition centre = wishedCentre != null ? wishedCentre
                : EventCentre.of(newest.outlook()).orElse(new GeoPosition(0, 0));
        if (contents != null && wishedCentre == null && near(contents.projector().plane(), centre)) {
            return contents.projector().plane();
        }
        return Plane.about(centre);
    }

    /** A plane stays while the event's middle wanders a little: nothing would be seen of a better one. */
    private static boolean near(Plane plane, GeoPosition centre) {
        double[] at = new double[2];
        plane.put(centre.latitudeDeg(), centre.longitudeDeg(), at, 0);
        return Math.hypot(at[0], at[1]) < 0.02 * plane.rimM();
    }

    private void lay(Plane plane) {
        Projector projector = new Projector(plane);
        contents = withPlaces(MapContents.empty(projector));
        baseMapWork.run(monitor -> LaidBaseMap.of(baseMap(monitor), projector), laid -> {
            contents = contents.with(laid);
            changed.run();
        }, failure -> failed(TEXTS.text("mapMaker.baseMap"), failure));
        readLayers();
    }

    private void readScene() {
        Computed from = computed;
        MapContents onto = contents;
        sceneWork.run(monitor -> EventScene.of(from.outlook(), onto.projector(), onto.grid(), Looks.of(from), monitor),
                scene -> {
                    contents = contents.with(scene);
                    changed.run();
                }, failure -> failed(TEXTS.text("mapMaker.map"), failure));
    }

    private static synchronized BaseMap baseMap(IProgressMonitor monitor) throws IOException {
        if (baseMap == null) {
            baseMap = BaseMap.load(monitor);
        }
        return baseMap;
    }

    private void failed(String work, Throwable failure) {
        refused.put(work, TEXTS.text("mapMaker.couldNotShown", "work", work, "reason", failure.getMessage()));
        if (failure instanceof IOException) {
            Problem.log(TEXTS.text("mapMaker.notShown", "work", work), failure);
        }
        changed.run();
    }
}
