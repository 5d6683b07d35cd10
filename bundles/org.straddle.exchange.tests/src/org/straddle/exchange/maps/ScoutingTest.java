package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.ReadException;
import org.straddle.grid.Candidate;
import org.straddle.grid.MapRole;
import org.straddle.grid.ScoutReach;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.model.Site;
import org.straddle.store.EventFolder;

/** Invented roads around 64°N 20°W. */
class ScoutingTest {

    private static final String ROADS = """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"name":"Moor Road"},"geometry":{"type":"LineString","coordinates":[[-20.001,64.5],[-19.999,64.5]]}},
            {"type":"Feature","properties":{"name":"Fell Road"},"geometry":{"type":"LineString","coordinates":[[-20.01,64.002],[-19.99,64.002]]}}]}
            """;
    private static final Scouting.Question USUAL = new Scouting.Question(new ScoutReach(10, 500), ScoutRegion.EVERYWHERE, Map.of());

    @TempDir
    private Path temp;

    private static Layer layer(EventFolder folder, String file, String content, String role) throws IOException {
        Layer layer = Fresh.layer();
        layer.setFile(folder.addLayer(file, content.getBytes()));
        layer.setRole(role);
        folder.event().getLayers().add(layer);
        return layer;
    }

    @Test
    void theLayersOfAnEvent() throws IOException {
        try (EventFolder folder = EventFolder.create(temp.resolve("event"), Fresh.event("Demo"))) {
            layer(folder, "net.geojson", ROADS, "road");
            layer(folder, "wire.geojson", "{\"type\":\"LineString\",\"coordinates\":[[-20.001,64.5005],[-19.999,64.5005]]}", "power-line");
            layer(folder, "picture.gpx", "<gpx> is never read", "plain");
            List<LayerSource> layers = LayerSource.of(folder);
            Scouting found = Scouting.of(layers, USUAL, square -> 0.5, null);
            assertEquals(List.of("64°N 20°W Fell Road", "20°W Fell Road", "20°W Moor Road"),
                    found.places().stream().map(place -> place.candidate().boundary() + " " + place.candidate().road().name()).toList());
            assertEquals(List.of(MapRole.ROAD, MapRole.POWER_LINE), found.around());
            assertEquals(2, found.roads());
            // 0.002° and 0.02° of longitude at 64°N: 96 m and 977 m.
            assertEquals(1.07, found.roadsKm(), 0.01);
            assertEquals(56, found.places().get(2).near(MapRole.POWER_LINE).orElseThrow().distanceM(), 1);
            Scouting.Question near = new Scouting.Question(USUAL.reach(), ScoutRegion.parse("IP03, hp93"), Map.of());
            assertEquals(1, Scouting.of(layers, near, square -> 0.5, null).places().size(), "the corner, where those two meet");
            layer(folder, "bad.gpx", "<gpx", "road");
            ReadException e = assertThrows(ReadException.class, () -> Scouting.of(LayerSource.of(folder), USUAL, square -> 1, null));
            assertEquals("bad.gpx", e.file());
            NullProgressMonitor cancelled = new NullProgressMonitor();
            cancelled.setCanceled(true);
            assertThrows(OperationCanceledException.class, () -> Scouting.of(layers, USUAL, square -> 1, cancelled));
        }
    }

    @Test
    void regions() {
        assertEquals(ScoutRegion.EVERYWHERE, ScoutRegion.parse("  "));
        assertEquals("[HP, IP04]", ScoutRegion.parse("hp; ip04").areas().toString());
        for (String wrong : List.of("HP94bc", "XX", "64")) {
            assertThrows(IllegalArgumentException.class, () -> ScoutRegion.parse(wrong), wrong);
        }
    }

    @Test
    void sitesOfPlaces() throws IOException {
        MapLayers maps = new MapLayers();
        maps.addForScouting(MapReader.read(Files.writeString(temp.resolve("net.geojson"), ROADS)));
        List<Candidate> found = Scouting.of(maps, USUAL, square -> 1, null).places().stream().map(place -> place.candidate()).toList();
        Event event = Fresh.event("Demo");
        assertEquals("64°N 20°W Fell Road 64.0 -20.0 ±5.0 corner [HP93, IP03, HP94, IP04]", sketch(ScoutedSite.of(found.get(0), event.getSites())),
                "223 m from the road: one walks to the corner");
        Site crossing = ScoutedSite.of(found.get(1), event.getSites());
        assertTrue(sketch(crossing).matches("20°W Moor Road 64\\.[45]\\d* -(20\\.0|19\\.99)\\d* ±10\\.0 line \\[HP94, IP04\\]"), sketch(crossing));
        event.getSites().add(crossing);
        assertEquals("20°W Moor Road 2", ScoutedSite.of(found.get(1), event.getSites()).getName());
    }

    private static String sketch(Site site) {
        return site.getName() + " " + site.getLatitudeDeg() + " " + site.getLongitudeDeg() + " ±" + site.getMarkErrorM() + " " + site.getKind() + " "
                + site.getSquares();
    }
}
