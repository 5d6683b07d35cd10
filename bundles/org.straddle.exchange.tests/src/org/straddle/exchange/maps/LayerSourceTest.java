package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.ReadException;
import org.straddle.model.Fresh;
import org.straddle.model.Layer;
import org.straddle.store.EventFolder;

/** Invented maps. */
class LayerSourceTest {

    /** A line that says nothing of itself, a road, and a post. */
    private static final String MAP = """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"name":"Wall"},"geometry":{"type":"LineString","coordinates":[[-20,64],[-20,65]]}},
            {"type":"Feature","properties":{"name":"Road","role":"road"},"geometry":{"type":"LineString","coordinates":[[-20,64],[-21,64]]}},
            {"type":"Feature","properties":{"name":"Post"},"geometry":{"type":"Point","coordinates":[-20,64]}}]}
            """;

    @TempDir
    private Path temp;
    private EventFolder folder;

    @BeforeEach
    void create() throws IOException {
        folder = EventFolder.create(temp.resolve("event"), Fresh.event("Demo"));
    }

    @AfterEach
    void close() {
        folder.close();
    }

    private Layer layer(String file, String content) throws IOException {
        Layer layer = Fresh.layer();
        layer.setFile(folder.addLayer(file, content.getBytes()));
        folder.event().getLayers().add(layer);
        return layer;
    }

    /** Roads to scout, and how many things there are of each role. */
    private static String sorted(LayerSource source) throws ReadException {
        MapLayers layers = new MapLayers();
        layers.addLayer(source, source.read(null));
        Map<String, Integer> around = new TreeMap<>();
        layers.around().forEach((role, features) -> around.put(role.name(), features.size()));
        return layers.roads().size() + " " + around;
    }

    private String sortedAs(String role) throws IOException {
        folder.event().getLayers().clear();
        layer("map.geojson", MAP).setRole(role);
        return sorted(LayerSource.of(folder).get(0));
    }

    @Test
    void theRoleOfALayerCountsForAllThatIsOnIt() throws IOException {
        assertEquals("2 {road=2}", sortedAs("road"));
        assertEquals("0 {road=3}", sortedAs("other-road"));
        assertEquals("0 {power-line=3}", sortedAs("Power lines"));
        assertEquals("0 {bird-reserve=3}", sortedAs("bird reserve"));
        assertEquals("0 {}", sortedAs("plain"));
        assertEquals("1 {road=1}", sortedAs(""));
        assertEquals("1 {road=1}", sortedAs(null));
        assertEquals("1 {road=1}", sortedAs("no role at all, but a sentence that somebody wrote into the file"));
    }

    @Test
    void filesPutIntoTheFolderByHandComeFirst() throws IOException {
        Layer named = layer("own.geojson", MAP);
        named.setTitle("Own map");
        named.setVisible(false);
        Files.createDirectories(folder.path().resolve("layers").resolve("more"));
        Files.writeString(folder.path().resolve("layers").resolve("more/power-lines.geojson"), MAP);
        Files.writeString(folder.path().resolve("layers").resolve("notes.txt"), "no map");
        for (int pass = 0; pass < 2; pass++) {
            List<LayerSource> sources = LayerSource.of(folder);
            assertEquals(List.of("more/power-lines.geojson", "Own map"), sources.stream().map(LayerSource::title).toList());
            assertEquals(List.of(Optional.empty(), Optional.of(named.getId())), sources.stream().map(LayerSource::id).toList());
            assertEquals(List.of(true, false), sources.stream().map(LayerSource::visible).toList());
            assertEquals("1 {power-line=2, road=1}", sorted(sources.get(0)));
            // The same when it lies on the disk.
            folder.save();
        }
    }

    @Test
    void equalWhileTheContentIsTheSame() throws IOException {
        Layer layer = layer("own.geojson", MAP);
        assertEquals(LayerSource.of(folder), LayerSource.of(folder));
        folder.save();
        List<LayerSource> saved = LayerSource.of(folder);
        assertEquals(saved, LayerSource.of(folder));
        Files.writeString(folder.path().resolve("layers").resolve(layer.getFile()), MAP + " ");
        assertTrue(!saved.equals(LayerSource.of(folder)));
    }

    @Test
    void swappedAndMissing() throws IOException {
        Layer layer = layer("swapped.geojson", "{\"type\":\"LineString\",\"coordinates\":[[64.5,-170],[64.5,-169]]}");
        ReadException refused = assertThrows(ReadException.class, () -> LayerSource.of(folder).get(0).read(null));
        assertTrue(refused.getCause() instanceof CoordinateOutOfRange place && place.fitsSwapped(), refused.getMessage());
        layer.setSwapped(true);
        assertEquals(64.5, LayerSource.of(folder).get(0).read(null).features().get(0).parts().get(0).latitudeDeg(0));
        layer.setFile("gone.gpx");
        refused = assertThrows(ReadException.class, () -> LayerSource.of(folder).get(0).read(null));
        assertTrue(refused.getMessage().startsWith("gone.gpx: there is no such file"), refused.getMessage());
    }
}
