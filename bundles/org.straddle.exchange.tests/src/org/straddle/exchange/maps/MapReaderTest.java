package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.LineScout;
import org.straddle.grid.MapFeature;
import org.straddle.grid.MapRole;
import org.straddle.grid.ScoutReach;
import org.straddle.grid.Trace;

public class MapReaderTest {

    /** From the sample file that the publisher of the GPX schema made in 2002 (GPX 1.0), cut short. */
    static final String PUBLISHED_GPX = """
            <?xml version="1.0"?>
            <gpx version="1.0" creator="sample"
             xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"
             xmlns="http://www.topografix.com/GPX/1/0"
             xsi:schemaLocation="http://www.topografix.com/GPX/1/0 http://www.topografix.com/GPX/1/0/gpx.xsd">
            <time>2002-02-27T17:18:33Z</time>
            <bounds minlat="42.401051" minlon="-71.126602" maxlat="42.468655" maxlon="-71.102973"/>
            <wpt lat="42.438878" lon="-71.119277">
             <ele>44.586548</ele>
             <time>2001-11-28T21:05:28Z</time>
             <name>5066</name>
             <desc><![CDATA[5066]]></desc>
             <sym>Crossing</sym>
             <type><![CDATA[Crossing]]></type>
            </wpt>
            <rte>
             <name>BELLEVUE</name>
             <desc><![CDATA[Bike Loop Bellevue]]></desc>
             <number>1</number>
             <rtept lat="42.430950" lon="-71.107628">
              <ele>23.469600</ele>
              <name>BELLEVUE</name>
              <type><![CDATA[Parking]]></type>
             </rtept>
             <rtept lat="42.431240" lon="-71.109236">
              <name>GATE6</name>
             </rtept>
            </rte>
            </gpx>
            """;

    /** Invented; the structure of a track is that of trkType and trksegType of the GPX 1.1 schema. */
    static final String TRACK = """
            <gpx version="1.1" creator="demo" xmlns="http://www.topografix.com/GPX/1/1" xmlns:x="http://example.org/x">
            <metadata><name>not of the track</name></metadata>
            <trk><name>Moor &amp; Fell</name><type>road</type>
            <extensions><x:trk><x:name>not this</x:name></x:trk></extensions>
            <trkseg><trkpt lat="64.5" lon="-20.01"/><trkpt lat="64.5" lon="-20.0"><ele>3</ele></trkpt></trkseg>
            <trkseg/>
            <trkseg><trkpt lat="64.6" lon="-20.01"/><trkpt lat="64.6" lon="-19.99"><name>no</name></trkpt></trkseg>
            </trk></gpx>
            """;

    /** RFC 7946 section 1.5. */
    static final String RFC_COLLECTION = """
            { "type": "FeatureCollection",
              "features": [{
                "type": "Feature",
                "geometry": {"type": "Point", "coordinates": [102.0, 0.5]},
                "properties": {"prop0": "value0"}
              }, {
                "type": "Feature",
                "geometry": {
                  "type": "LineString",
                  "coordinates": [[102.0, 0.0], [103.0, 1.0], [104.0, 0.0], [105.0, 1.0]]
                },
                "properties": {"prop0": "value0", "prop1": 0.0}
              }, {
                "type": "Feature",
                "geometry": {
                  "type": "Polygon",
                  "coordinates": [[[100.0, 0.0], [101.0, 0.0], [101.0, 1.0], [100.0, 1.0], [100.0, 0.0]]]
                },
                "properties": {"prop0": "value0", "prop1": {"this": "that"}}
              }]
            }
            """;

    public static MapFile read(String text) throws ReadException {
        return read(text, CoordinateOrder.OF_THE_FORMAT);
    }

    private static MapFile read(String text, CoordinateOrder order) throws ReadException {
        return MapReader.read(new SourceFile("map", text.getBytes(StandardCharsets.UTF_8)), order, null);
    }

    private static ReadException refused(String text) {
        return assertThrows(ReadException.class, () -> read(text));
    }

    /** Names, roles, shapes and numbers of positions of the parts. */
    private static String sketch(MapFile map) {
        return map.features().stream().map(f -> (f.name() + " " + f.role().map(MapRole::name).orElse("") + " " + f.shape()
                + f.parts().stream().map(Trace::size).toList()).strip()).collect(Collectors.joining(", "));
    }

    @Test
    void thePublishedGpx() throws ReadException {
        MapFile map = read(PUBLISHED_GPX);
        assertEquals(FileFormat.GPX, map.format());
        assertEquals("5066  POINTS[1], BELLEVUE  LINES[2]", sketch(map));
        assertEquals(new GeoPosition(42.438878, -71.119277), map.features().get(0).parts().get(0).position(0));
        assertEquals(new GeoPosition(42.43124, -71.109236), map.features().get(1).parts().get(0).position(1));
        assertEquals(List.of(), map.remarks());
    }

    @Test
    void segmentsOfATrackStayApart() throws ReadException {
        MapFile map = read(TRACK);
        assertEquals("Moor & Fell road LINES[2, 2]", sketch(map));
        assertEquals(1, map.remarks().size());
        assertTrue(map.remarks().get(0).contains("Moor & Fell") && map.remarks().get(0).contains("no position"), map.remarks().get(0));
    }

    /** latitudeType and longitudeType of the GPX 1.1 schema: -90 to 90, -180 up to but not 180; 180 does no harm. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "90     | -180   | -",
        "-90    | 179.9  | -",
        "+1.5   | 180    | -",
        "' 1 '  | 2e1    | -",
        "90.1   | 0      | latitude 90.1",
        "0      | 180.1  | longitude 180.1",
        "NaN    | 0      | lat=\"NaN\"",
        "1d     | 0      | lat=\"1d\"",
        "''     | 0      | lat=\"\"",
        "12,5   | 0      | lat=\"12,5\"",
        "1      | 0x1p3  | lon=\"0x1p3\""})
    void coordinatesOfGpx(String lat, String lon, String complaint) throws ReadException {
        String gpx = "<gpx version='1.1'>\n<wpt lat='" + lat + "' lon='" + lon + "'/></gpx>";
        if (complaint == null) {
            assertEquals(1, read(gpx).features().size());
            return;
        }
        ReadException e = refused(gpx);
        assertEquals(2, e.line());
        assertTrue(e.what().startsWith(complaint), e.what());
    }

    @Test
    void aPointMustHaveBothCoordinatesAndAPlace() {
        assertTrue(refused("<gpx><wpt lat='1'/></gpx>").what().contains("attribute lon"));
        assertTrue(refused("<gpx><trkpt lat='1' lon='2'/></gpx>").what().contains("belongs to no route"));
        assertTrue(refused("<gpx><trk><trkseg><wpt lat='1' lon='2'/></trkseg></trk></gpx>").what().contains("<wpt>"));
        assertTrue(refused("<kml/>").what().contains("<kml>"));
    }

    @Test
    void theExampleOfTheRfc() throws ReadException {
        MapFile map = read(RFC_COLLECTION);
        assertEquals(FileFormat.GEOJSON, map.format());
        assertEquals(List.of(MapFeature.Shape.POINTS, MapFeature.Shape.LINES, MapFeature.Shape.AREA),
                map.features().stream().map(MapFeature::shape).toList());
        // Longitude comes first.
        assertEquals(new GeoPosition(0.5, 102), map.features().get(0).parts().get(0).position(0));
        assertEquals(List.of(), map.remarks());
    }

    /** The geometries of RFC 7946 appendix A, in small figures; each text is the member "coordinates". */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Point           | [100.0, 0.0]                                           | POINTS[1]",
        "Point           | [100.0, 0.0, 12.5, 3]                                  | POINTS[1]",
        "MultiPoint      | [[100.0, 0.0], [100.001, 0.001]]                       | POINTS[2]",
        "LineString      | [[100.0, 0.0], [100.001, 0.001]]                       | LINES[2]",
        "MultiLineString | [[[100.0, 0.0], [100.001, 0.001]], [[102, 2], [102, 3], [102, 4]]] | LINES[2, 3]",
        "Polygon         | [[[100.0, 0], [100.006, 0], [100.006, 0.006], [100.0, 0]], [[100.002, 0.002], [100.004, 0.002], [100.004, 0.004], [100.002, 0.002]]] | AREA[4, 4]",
        "MultiPolygon    | [[[[102, 2], [102.006, 2], [102.006, 2.006], [102, 2]]], [[[100, 0], [100.006, 0], [100.006, 0.006], [100, 0]]]] | AREA[4, 4]"})
    void geometries(String type, String coordinates, String expected) throws ReadException {
        assertEquals(expected, sketch(read("{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}")));
        // Members come in any order (RFC 8259).
        assertEquals("n " + " " + expected, sketch(read("{\"properties\":{\"x\":[{}],\"name\":\"n\"},\"geometry\":{\"bbox\":[1,2,3,4],"
                + "\"coordinates\":" + coordinates + ",\"type\":\"" + type + "\"},\"id\":7,\"type\":\"Feature\"}")));
    }

    @Test
    void aCollectionOfGeometries() throws ReadException {
        // RFC 7946 appendix A.7, the line made short.
        assertEquals("POINTS[1], LINES[2]", sketch(read("""
                {"type": "GeometryCollection", "geometries": [
                  {"type": "Point", "coordinates": [100.0, 0.0]},
                  {"type": "LineString", "coordinates": [[101.0, 0.0], [101.001, 0.001]]}]}""")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", value = {
        "\"role\":\"Power lines\"        | power-line",
        "\"role\":\"car park\"           | car-park",
        "\"highway\":\"street_lamp\"     | -",
        "\"power\":\"line\"              | power-line",
        "\"railway\":\"rail\"            | railway",
        "\"building\":\"yes\"            | building",
        "\"landuse\":\"quarry\"          | quarry",
        "\"landuse\":\"meadow\"          | -",
        "\"role\":\"ferry\",\"highway\":\"x\" | ferry"})
    void roles(String property, String role) throws ReadException {
        MapFile map = read("{\"type\":\"Feature\",\"properties\":{" + property
                + "},\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]}}");
        assertEquals(role, map.features().get(0).role().map(MapRole::name).orElse(null));
    }

    @Test
    void aLineTaggedAsHighwayIsARoad() throws ReadException {
        assertEquals("road LINES[2]", sketch(read("{\"type\":\"Feature\",\"properties\":{\"highway\":\"track\"},"
                + "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[1,2],[1,2.001]]}}")));
    }

    @Test
    void whatIsOfNoUseIsLeftOutWithARemark() throws ReadException {
        MapFile map = read("""
                {"type":"FeatureCollection","features":[
                {"type":"Feature","properties":{"name":"nowhere"},"geometry":null},
                {"type":"Feature","properties":null,"geometry":{"type":"LineString","coordinates":[]}},
                {"type":"Feature","properties":{"name":"dot"},"geometry":{"type":"LineString","coordinates":[[1,2]]}},
                {"type":"Feature","properties":{"name":"still"},"geometry":{"type":"LineString","coordinates":[[1,2],[1,2]]}},
                {"type":"Feature","properties":{},"geometry":{"type":"MultiLineString","coordinates":[[],[[1,2],[1,2.001]]]}},
                {"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[1,2],[1,2.001],[1.001,2]]]}},
                {"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[]]}},
                {"type":"Feature","properties":{"name":"loop"},"geometry":{"type":"LineString","coordinates":[[1,2],[1.001,2.001],[1,2.001],[1.001,2]]}}
                ]}""");
        assertEquals("LINES[2], AREA[4], loop  LINES[4]", sketch(map));
        assertEquals(List.of("line 2:", "line 3:", "line 4:", "line 5:", "line 6:", "line 7:", "line 8:"),
                map.remarks().stream().map(remark -> remark.substring(0, 7)).toList());
        assertTrue(map.remarks().get(0).contains("nowhere"), map.remarks().get(0));
    }

    @Test
    void manyRemarksAreCounted() throws ReadException {
        String empty = "{\"type\":\"Feature\",\"properties\":null,\"geometry\":null},\n";
        MapFile map = read("{\"type\":\"FeatureCollection\",\"features\":[" + empty.repeat(50)
                + "{\"type\":\"Feature\",\"properties\":null,\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]}}]}");
        assertEquals(MapFile.MOST_REMARKS + 1, map.remarks().size());
        assertTrue(map.remarks().get(MapFile.MOST_REMARKS).startsWith("30 more"), map.remarks().get(MapFile.MOST_REMARKS));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{\"type\":\"Topology\"}                                              | \"Topology\" is not a type",
        "{\"a\":1}                                                            | no type",
        "{\"type\":\"FeatureCollection\"}                                     | without features",
        "{\"type\":\"FeatureCollection\",\"features\":{}}                     | array in brackets",
        "{\"type\":\"FeatureCollection\",\"features\":[]}                     | no points, lines or areas",
        "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Point\",\"coordinates\":[1,2]}]} | type Point instead of Feature",
        "{\"type\":\"Point\"}                                                 | without coordinates",
        "{\"type\":\"Point\",\"coordinates\":[[1,2]]}                         | not nested",
        "{\"type\":\"LineString\",\"coordinates\":[1,2]}                      | not nested",
        "{\"type\":\"LineString\",\"coordinates\":[[1,2],[[1,2]]]}            | two numbers",
        "{\"type\":\"LineString\",\"coordinates\":[[1,2],[3]]}                | two numbers",
        "{\"type\":\"LineString\",\"coordinates\":[[1,2],3]}                  | in brackets",
        "{\"type\":\"MultiLineString\",\"coordinates\":[[[1,2],[1,3]],[4,5]]} | unevenly",
        "{\"type\":\"Point\",\"coordinates\":[1,\"2\"]}                       | two numbers",
        "{\"type\":\"Point\",\"coordinates\":[1,NaN]}                         | well-formed",
        "{\"type\":\"Point\",\"coordinates\":[1,1e999]}                       | latitude Infinity",
        "{\"type\":\"Point\",\"coordinates\":[[[[[1,2]]]]]}                   | nested deeper",
        "{\"type\":\"Point\",\"coordinates\":[1,2]} {}                        | follows the end",
        "{\"type\":\"Point\",\"coordinates\":[1,2],\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"urn:ogc:def:crs:EPSG::3857\"}}} | EPSG::3857",
        "[1,2]                                                                | neither GPX nor GeoJSON"})
    void whatIsNoGeoJson(String text, String complaint) {
        ReadException e = refused(text);
        assertTrue(e.what().contains(complaint), e.what());
        assertTrue(e.line() <= 1, "line " + e.line());
    }

    @Test
    void theOldMemberForWgs84IsFine() throws ReadException {
        for (String name : List.of("urn:ogc:def:crs:OGC:1.3:CRS84", "EPSG:4326", "urn:ogc:def:crs:OGC::CRS84")) {
            assertEquals("POINTS[1]", sketch(read("{\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"" + name
                    + "\"}},\"type\":\"Point\",\"coordinates\":[1,2]}")));
        }
    }

    @Test
    void theSwapIsOfferedWhenItHelps() throws ReadException {
        String swapped = "{\"type\":\"Point\",\"coordinates\":[50.5,\n120.5]}";
        ReadException e = refused(swapped);
        assertEquals(2, e.line());
        assertTrue(e.what().contains("latitude 120.5") && e.whatToDo().contains("swapped"), e.getMessage());
        assertTrue(assertInstanceOf(CoordinateOutOfRange.class, e.getCause()).fitsSwapped());
        assertEquals(new GeoPosition(50.5, 120.5), read(swapped, CoordinateOrder.SWAPPED).features().get(0).parts().get(0).position(0));
        String gpx = "<gpx><wpt lat='120.5' lon='50.5'/></gpx>";
        assertTrue(refused(gpx).whatToDo().contains("swapped"));
        assertEquals(new GeoPosition(50.5, 120.5), read(gpx, CoordinateOrder.SWAPPED).features().get(0).parts().get(0).position(0));
        ReadException metres = refused("{\"type\":\"Point\",\"coordinates\":[541234.5,7151234.5]}");
        assertFalse(assertInstanceOf(CoordinateOutOfRange.class, metres.getCause()).fitsSwapped());
        assertTrue(metres.whatToDo().contains("metres of a map grid"), metres.whatToDo());
    }

    @Test
    void aSwapInRangeShowsByWhereTheMapShouldBe() throws ReadException {
        GeoPosition iceland = new GeoPosition(64.5, -20);
        assertTrue(SwapHint.seemsSwapped(read("{\"type\":\"Point\",\"coordinates\":[64.1,-21.9]}"), iceland));
        assertFalse(SwapHint.seemsSwapped(read("{\"type\":\"Point\",\"coordinates\":[-21.9,64.1]}"), iceland));
        assertFalse(SwapHint.seemsSwapped(read("{\"type\":\"Point\",\"coordinates\":[10,20]}"), iceland));
    }

    /** RFC 7946 section 3.1.1: points between two positions lie on F(lon, lat) = (lon0 + (lon1 - lon0) t, lat0 + (lat1 - lat0) t). */
    @Test
    void anEdgeIsStraightInDegrees() throws ReadException {
        MapFile map = read("{\"type\":\"LineString\",\"coordinates\":[[-20.2,64.4],[-19.7,64.7]]}");
        List<Candidate> found = LineScout.candidates(map.features(), new ScoutReach(10, 0), null);
        assertEquals(1, found.size());
        double t = 0.2 / 0.5;
        GeoPosition expected = new GeoPosition(64.4 + 0.3 * t, -20);
        assertTrue(Geodesic.distanceM(expected, found.get(0).position()) < 0.1, found.get(0).position().toString());
        // A geodesic between the ends would pass metres beside.
        List<Candidate> direct = LineScout.candidates(List.of(MapFeature.line("", new GeoPosition(64.4, -20.2),
                new GeoPosition(64.7, -19.7))), new ScoutReach(10, 0), null);
        assertTrue(Geodesic.distanceM(expected, direct.get(0).position()) > 5);
        // The short way across 180°.
        MapFile across = read("{\"type\":\"LineString\",\"coordinates\":[[179.9,10.5],[-179.9,10.5]]}");
        assertEquals("180°W", LineScout.candidates(across.features(), new ScoutReach(10, 0), null).stream()
                .map(c -> c.boundary().toString()).collect(Collectors.joining()));
    }
}
