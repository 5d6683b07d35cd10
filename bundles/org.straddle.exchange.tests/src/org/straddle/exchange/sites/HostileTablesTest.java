package org.straddle.exchange.sites;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.maps.EntityAttack;
import org.straddle.exchange.maps.MapFile;
import org.straddle.exchange.maps.MapLayers;
import org.straddle.exchange.maps.MapReaderTest;
import org.straddle.exchange.maps.ScoutRegion;
import org.straddle.exchange.maps.Scouting;
import org.straddle.model.Fresh;

/** Files that are no tables of sites, or mean harm: each is refused with a reason, soon, and changes nothing. */
class HostileTablesTest {

    private static final String CSV = "name,latitude,longitude\nGate,64.5,-20\nFell,64,-22\n";
    private static final String GPX = "<?xml version=\"1.0\"?><gpx><wpt lat=\"64.5\" lon=\"-20\"><name>Gate</name></wpt></gpx>";
    private static final String GEOJSON =
            "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"name\":\"Gate\"},\"geometry\":{\"type\":\"Point\",\"coordinates\":[-20,64.5]}}]}";

    @TempDir
    private Path temp;

    private static ReadException refused(byte[] bytes) {
        ReadException refusal = assertThrows(ReadException.class,
                () -> assertTimeoutPreemptively(Duration.ofSeconds(60), () -> SourceTable.read("sites", bytes)));
        assertFalse(refusal.whatToDo().isBlank());
        return refusal;
    }

    private static ReadException refused(String text) {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {GPX, GEOJSON})
    void cutOffAnywhere(String good) {
        for (int length = 0; length < good.length(); length += 3) {
            refused(good.substring(0, length));
        }
    }

    /** A table that is cut off may still be one; it never brings more than it has. */
    @Test
    void tablesCutOffAnywhere() throws ReadException {
        for (int length = 0; length < CSV.length(); length++) {
            try {
                SourceTable table = SourceTable.read("sites.csv", CSV.substring(0, length).getBytes(StandardCharsets.UTF_8));
                assertTrue(table.rows().size() <= 2 && table.rows().size() > 0);
            } catch (ReadException e) {
                assertFalse(e.what().isBlank());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {CSV, GPX, GEOJSON})
    void noiseAndOtherEncodings(String good) throws ReadException {
        byte[] noise = new byte[1 << 20];
        new Random(1).nextBytes(noise);
        refused(noise);
        byte[] start = good.getBytes(StandardCharsets.UTF_8);
        System.arraycopy(start, 0, noise, 0, start.length);
        refused(noise);
        assertTrue(refused(good.getBytes(StandardCharsets.UTF_16)).what().contains("UTF-16"));
        ReadException latin = refused(good.replace("Gate", "Gäte").getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(good.equals(CSV) ? 2 : 1, latin.line());
        assertTrue(SourceTable.read("sites", ("\uFEFF" + good).getBytes(StandardCharsets.UTF_8)).rows().size() > 0);
        refused(good + "\0");
    }

    @Test
    void entitiesAreRefused() {
        for (String gpx : EntityAttack.GPX) {
            assertTrue(refused(gpx).what().contains("DOCTYPE"), gpx);
        }
    }

    @Test
    void aNulIsToldWithItsLine() {
        ReadException refused = assertThrows(ReadException.class, () -> SourceTable.read("sites.csv",
                "name,lat,lon\na,1,2\nb,\0,4\n".getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        assertEquals(3, refused.line());
        assertTrue(refused.what().contains("NUL"));
    }

    @Test
    void whatWouldSwellIsRefused() {
        refused("<gpx>" + "<a>".repeat(1_000_000));
        refused("{\"a\":".repeat(1_000_000));
        refused("{\"type\":\"Feature\",\"geometry\":".repeat(100_000));
        assertTrue(refused("name,lat,lon\n" + "a,1,2\n".repeat(SourceTable.MOST_ROWS + 1)).what().contains("20000"));
        assertTrue(refused("<gpx>" + "<wpt lat='1' lon='2'/>".repeat(SourceTable.MOST_ROWS + 1) + "</gpx>").what().contains("20000"));
        assertTrue(refused("a,".repeat(1000) + "\n1,2,3\n").what().contains("columns"));
        assertTrue(refused("name,lat,lon\n" + "x".repeat(3000) + ",1,2\n").what().contains("longer"));
        StringBuilder names = new StringBuilder("{\"type\":\"FeatureCollection\",\"features\":[");
        for (int i = 0; i < 300; i++) {
            names.append(i == 0 ? "" : ",").append("{\"type\":\"Feature\",\"properties\":{\"p").append(i)
                    .append("\":1},\"geometry\":{\"type\":\"Point\",\"coordinates\":[1,2]}}");
        }
        assertTrue(refused(names + "]}").what().contains("properties"));
    }

    @Test
    void aHundredMegabytes() throws IOException {
        Path huge = temp.resolve("huge.csv");
        Files.writeString(huge, CSV);
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(100_000_000);
        }
        ReadException e = assertTimeoutPreemptively(Duration.ofSeconds(60),
                () -> assertThrows(ReadException.class, () -> SourceTable.read(huge, null)));
        assertTrue(e.what().contains("16 MB"), e.getMessage());
        assertTrue(assertThrows(ReadException.class, () -> SourceTable.read(temp, null)).what().contains("no plain file")
                || assertThrows(ReadException.class, () -> SourceTable.read(temp, null)).what().contains("not a plain file"));
        assertTrue(assertThrows(ReadException.class, () -> SourceTable.read(temp.resolve("none"), null)).what().contains("no such file"));
        NullProgressMonitor cancelled = new NullProgressMonitor();
        cancelled.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> SourceTable.read(huge, cancelled));
    }

    /** As many lines as may be, compared with an event that has many sites, end soon. */
    @Test
    void theLargestTableIsComparedSoon() throws ReadException {
        var event = Fresh.event("Demo");
        for (int i = 0; i < 500; i++) {
            var site = Fresh.site();
            site.setName("Site " + i);
            site.setLatitudeDeg(64 + i * 1e-5);
            event.getSites().add(site);
        }
        StringBuilder text = new StringBuilder("name,lat,lon\n");
        for (int i = 0; i < SourceTable.MOST_ROWS; i++) {
            text.append("Row ").append(i).append(',').append(64 + i * 1e-5).append(",1\n");
        }
        SourceTable table = SourceTable.read("sites.csv", text.toString().getBytes(StandardCharsets.UTF_8));
        SiteMapping mapping = SiteMapping.guess(table);
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            for (SiteKey key : new SiteKey[] {SiteKey.NAME, SiteKey.within(10)}) {
                assertEquals(SourceTable.MOST_ROWS, SiteImport.of(event, table, mapping, CoordinateOrder.OF_THE_FORMAT, key).changes().size());
            }
        });
    }

    /** A road may cross itself: that makes it no less of a road. Both its crossings of the line are found. */
    @Test
    void linesThatCrossThemselvesAreAccepted() throws ReadException {
        String loop = "{\"type\":\"LineString\",\"coordinates\":[[-20.01,64.5],[-19.99,64.51],[-19.99,64.5],[-20.01,64.52]]}";
        MapFile map = MapReaderTest.read(loop);
        assertEquals(0, map.remarks().size());
        MapLayers maps = new MapLayers();
        maps.addForScouting(map);
        Scouting found = Scouting.of(maps, new Scouting.Question(new org.straddle.grid.ScoutReach(10, 0), ScoutRegion.EVERYWHERE, java.util.Map.of()),
                square -> 1, null);
        assertEquals(2, found.places().size());
    }
}
