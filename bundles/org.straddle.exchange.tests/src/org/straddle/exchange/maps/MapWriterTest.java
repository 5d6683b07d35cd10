package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.straddle.exchange.ReadException;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.grid.Trace;

/** What goes out is read back by the reader of foreign maps. */
class MapWriterTest {

    private static final MapFeature ROAD = new MapFeature("Ring <1> & more", Optional.of(MapRole.ROAD), MapFeature.Shape.LINES,
            List.of(Trace.of(new GeoPosition(64.5, -20), new GeoPosition(64.5, -20.001)), Trace.of(new GeoPosition(64, -20), new GeoPosition(64.001, -20))));
    private static final MapFeature POSTS = new MapFeature("Posts", Optional.empty(), MapFeature.Shape.POINTS,
            List.of(Trace.of(new GeoPosition(64, -21), new GeoPosition(65, -21))));
    private static final MapFeature YARD = new MapFeature("Yard", Optional.of(MapRole.QUARRY), MapFeature.Shape.AREA,
            List.of(Trace.of(new GeoPosition(64, -21), new GeoPosition(64, -21.001), new GeoPosition(64.001, -21), new GeoPosition(64, -21))));

    private static String sketch(List<MapFeature> features) {
        return features.stream().map(f -> f.name() + " " + f.role().map(MapRole::name).orElse("-") + " " + f.shape() + " "
                + f.parts().stream().map(part -> part.positions().toString()).collect(Collectors.joining(" "))).collect(Collectors.joining("\n"));
    }

    @Test
    void geoJsonComesBack() throws ReadException {
        List<MapFeature> all = List.of(ROAD, YARD);
        assertEquals(sketch(all), sketch(MapReaderTest.read(MapWriter.geoJson(all)).features()));
        MapFile points = MapReaderTest.read(MapWriter.geoJson(List.of(POSTS)));
        assertEquals(2, points.features().get(0).size());
    }

    /** Areas become tracks: GPX 1.1 knows none. */
    @Test
    void gpxComesBack() throws ReadException {
        assertEquals(sketch(List.of(ROAD)), sketch(MapReaderTest.read(MapWriter.gpx(List.of(ROAD))).features()));
        MapFile map = MapReaderTest.read(MapWriter.gpx(List.of(YARD, POSTS)));
        assertEquals(List.of("Posts", "Posts", "Yard"), map.features().stream().map(MapFeature::name).toList());
        assertEquals(MapFeature.Shape.LINES, map.features().get(2).shape());
        String gpx = MapWriter.gpx(List.of(ROAD, POSTS));
        assertTrue(gpx.indexOf("<wpt") < gpx.indexOf("<trk>"), "the order of gpxType in the schema");
    }
}
