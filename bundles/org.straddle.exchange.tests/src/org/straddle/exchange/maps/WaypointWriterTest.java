package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.Waypoint;
import org.straddle.grid.CandidateRanking;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.LineScout;
import org.straddle.grid.MapFeature;
import org.straddle.grid.ScoutReach;
import org.straddle.model.Fresh;
import org.straddle.model.Site;

class WaypointWriterTest {

    private static final Waypoint TRICKY = new Waypoint(new GeoPosition(64.123456789, -20), "Gate <A> & \"B\" \u0000\uFFFF𝄞",
            "HP94 ]]> IP04", "site");

    /** The order name, desc, type is that of wptType in the GPX 1.1 schema. */
    @Test
    void gpx() {
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <gpx version="1.1" creator="Straddle" xmlns="http://www.topografix.com/GPX/1/1">
                  <wpt lat="64.1234568" lon="-20.0000000">
                    <name>Gate &lt;A&gt; &amp; "B" \\u0000\\uffff𝄞</name>
                    <desc>HP94 ]]&gt; IP04</desc>
                    <type>site</type>
                  </wpt>
                </gpx>
                """, WaypointWriter.gpx(List.of(TRICKY)));
    }

    @Test
    void geoJson() {
        assertEquals("{\"type\":\"FeatureCollection\",\"features\":[\n{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\","
                + "\"coordinates\":[-20.0000000,64.1234568]},\"properties\":{\"name\":\"Gate <A> & \\\"B\\\" \\u0000\uFFFF𝄞\","
                + "\"description\":\"HP94 ]]> IP04\",\"type\":\"site\"}}]}\n", WaypointWriter.geoJson(List.of(TRICKY)));
    }

    /** longitudeType of the GPX 1.1 schema ends below 180. */
    @Test
    void aLongitudeDoesNotRoundUpTo180() throws ReadException {
        Waypoint edge = new Waypoint(new GeoPosition(0, 179.99999999), "", "", "");
        assertTrue(WaypointWriter.gpx(List.of(edge)).contains("lon=\"-180.0000000\""));
        assertEquals(-180, MapReaderTest.read(WaypointWriter.geoJson(List.of(edge))).features().get(0).parts().get(0).longitudeDeg(0));
    }

    @Test
    void sitesAndCandidatesComeBackAsWritten() throws ReadException {
        Site site = Fresh.site();
        site.setName("Demo Gate");
        site.setLatitudeDeg(64.5);
        site.setLongitudeDeg(-20);
        site.getSquares().addAll(List.of("HP94", "IP04"));
        ScoutReach reach = new ScoutReach(10, 500);
        List<MapFeature> roads = List.of(MapFeature.line("Moor Road", new GeoPosition(64.3, -20.01), new GeoPosition(64.3, -19.99)));
        Waypoint candidate = Waypoint.of(CandidateRanking.rank(LineScout.candidates(roads, reach, null), reach, square -> 0.5,
                List.of(), null).get(0));
        assertEquals("20°W Moor Road", candidate.name());
        assertEquals("HP94 IP04; 10 m of road to stand on; 1.00 points", candidate.description());
        List<Waypoint> both = List.of(Waypoint.of(site), candidate);
        for (String text : List.of(WaypointWriter.gpx(both), WaypointWriter.geoJson(both))) {
            MapFile map = MapReaderTest.read(text);
            assertEquals(List.of("Demo Gate", "20°W Moor Road"), map.features().stream().map(MapFeature::name).toList());
            for (int i = 0; i < 2; i++) {
                assertTrue(Geodesic.distanceM(both.get(i).position(), map.features().get(i).parts().get(0).position(0)) < 0.01);
            }
        }
    }
}
