package org.straddle.demo;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.exchange.maps.MapWriter;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapFeature;
import org.straddle.grid.Trace;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.Site;

/**
 * Roads and power lines of the demo, for the line scout. They are drawn by a formula from site to site, sometimes over
 * water, and are no real roads and no real wires.
 */
final class DemoLayers {

    private static final String ROADS = "demo-roads.geojson";
    private static final String POWER_LINES = "demo-power-lines.geojson";

    /** In the middle of the island. */
    private static final GeoPosition CENTRE = new GeoPosition(64.95, -18.8);
    private static final int PIECES = 24;

    private DemoLayers() {
    }

    static void addTo(Event event) {
        layer(event, ROADS, "Roads (invented)", "road");
        layer(event, POWER_LINES, "Power lines (invented)", "power-line");
    }

    private static void layer(Event event, String file, String title, String role) {
        Layer layer = DemoIdentity.named(Fresh.layer(), "layer " + file);
        layer.setFile(file);
        layer.setTitle(title);
        layer.setRole(role);
        event.getLayers().add(layer);
    }

    /** What lies in the files, by their names. */
    static Map<String, byte[]> files(Event event) {
        List<GeoPosition> marks = event.getSites().stream().sorted(Comparator.comparingDouble(DemoLayers::around))
                .map(site -> new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg())).toList();
        List<MapFeature> roads = new ArrayList<>();
        List<MapFeature> wires = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            GeoPosition from = marks.get(i);
            GeoPosition to = marks.get((i + 1) % marks.size());
            roads.add(line("Ring " + (i + 1) + " (invented)", from, to, 0.03, 0));
            roads.add(line("Track " + (i + 1) + " (invented)", from, CENTRE, 0.06, 0));
            wires.add(line("", from, to, 0.03, 0.004));
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(ROADS, MapWriter.geoJson(roads).getBytes(StandardCharsets.UTF_8));
        files.put(POWER_LINES, MapWriter.geoJson(wires).getBytes(StandardCharsets.UTF_8));
        return files;
    }

    private static double around(Site site) {
        return Math.atan2(site.getLatitudeDeg() - CENTRE.latitudeDeg(), (site.getLongitudeDeg() - CENTRE.longitudeDeg()) / 2);
    }

    /** Winding once to both sides of the straight way, and shifted a little to the north. */
    private static MapFeature line(String name, GeoPosition from, GeoPosition to, double windingDeg, double northDeg) {
        Trace.Builder trace = new Trace.Builder();
        for (int i = 0; i <= PIECES; i++) {
            double part = (double) i / PIECES;
            double aside = windingDeg * Math.sin(2 * Math.PI * part);
            trace.add(from.latitudeDeg() + part * (to.latitudeDeg() - from.latitudeDeg()) + aside + northDeg,
                    from.longitudeDeg() + part * (to.longitudeDeg() - from.longitudeDeg()) - aside);
        }
        return new MapFeature(name, Optional.empty(), MapFeature.Shape.LINES, List.of(trace.build()));
    }
}
