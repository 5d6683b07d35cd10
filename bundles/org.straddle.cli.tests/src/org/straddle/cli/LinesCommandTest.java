package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.grid.MapRole;
import org.straddle.grid.Surroundings;
import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.StraddleFactory;
import org.straddle.store.EventFolder;

/** Invented roads around 64°N 20°W. */
class LinesCommandTest {

    private static final String ROADS = """
            {"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"name":"Moor Road"},"geometry":{"type":"LineString","coordinates":[[-20.001,64.5],[-19.999,64.5]]}},
            {"type":"Feature","properties":{"name":"Fell Road"},"geometry":{"type":"LineString","coordinates":[[-20.001,65.5],[-19.999,65.5]]}},
            {"type":"Feature","properties":{"name":"Post"},"geometry":{"type":"Point","coordinates":[-20,64]}}]}
            """;
    private static final String WIRE = "{\"type\":\"LineString\",\"coordinates\":[[-20.001,64.5005],[-19.999,64.5005]]}";
    private static final String TRACK = """
            <gpx version="1.1"><trk><name>Ridge</name><trkseg><trkpt lat="63.998" lon="-20.002"/>
            <trkpt lat="64.002" lon="-19.998"/></trkseg></trk></gpx>
            """;

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static List<String> rows(Console run) {
        assertEquals(0, run.code(), run.err());
        return run.out().lines().skip(1).toList();
    }

    @Test
    void filesOfRoads() throws IOException {
        Console run = Console.run("lines", file("roads.geojson", ROADS), file("ridge.gpx", TRACK), "--format", "csv");
        List<String> rows = rows(run);
        assertEquals(3, rows.size(), run.out());
        // A geodesic between the ends passes the corner a few millimetres away.
        assertTrue(rows.get(0).matches("4,4,corner,64°N 20°W,HP93 IP03 HP94 IP04,64\\.000000.,-20\\.000000.,Ridge,24,23\\.7,10,0,"),
                rows.get(0));
        assertEquals("2,2,crossing,20°W,HP95 IP05,65.5000000,-20.0000000,Fell Road,90,90,10,0,", rows.get(1));
        assertEquals("points,demand,kind,boundary,squares,latitudeDeg,longitudeDeg,road,bearingDeg,angleDeg,bandM,distanceM,roadM",
                run.out().lines().findFirst().orElseThrow());
        assertTrue(run.err().contains("roads.geojson: left out 1 thing"), run.err());
    }

    @Test
    void nearAndWeight() throws IOException {
        Path roads = file("roads.geojson", ROADS);
        Path wire = file("wire.geojson", WIRE);
        List<String> usual = rows(Console.run("lines", roads, "--near", "Power lines=" + wire, "--format", "csv"));
        // 55.7 m away: 2 - 2 (1 - 55.7 / 200).
        assertTrue(usual.get(1).startsWith("0.56,2,crossing,20°W,HP94 IP04,") && usual.get(1).endsWith(",,56"), usual.get(1));
        List<String> liked = rows(Console.run("lines", roads, "--near", "wire=" + wire, "--weight", "wire=3@100", "--top", 1,
                "--format", "csv"));
        assertEquals(1, liked.size());
        assertTrue(liked.get(0).startsWith("3.33,2,"), liked.get(0));
        String people = Console.run("lines", roads, "--near", "Power lines=" + wire).out();
        assertTrue(people.lines().filter(line -> line.contains("Fell Road")).allMatch(line -> line.strip().endsWith("not known")), people);
        assertTrue(people.lines().filter(line -> line.contains("Moor Road")).noneMatch(line -> line.strip().endsWith("not known")), people);
    }

    /** Three roads that meet on 20°W: one place with three names, on the command line as in the window. */
    @Test
    void whereRoadsMeetIsOneRow() throws IOException {
        String line = "{\"type\":\"Feature\",\"properties\":{\"name\":\"%s\"},\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[%s],[%s]]}}";
        Path roads = file("meeting.geojson", "{\"type\":\"FeatureCollection\",\"features\":["
                + line.formatted("Skua Road", "-20.02,64.5", "-20,64.5") + ","
                + line.formatted("Petrel Road", "-20,64.5", "-19.98,64.5") + ","
                + line.formatted("Auk Track", "-20,64.5", "-19.98,64.51") + "]}");
        List<String> rows = rows(Console.run("lines", roads, "--format", "csv"));
        assertEquals(1, rows.size(), rows.toString());
        for (String name : List.of("Skua Road", "Petrel Road", "Auk Track")) {
            assertTrue(rows.get(0).contains(name), rows.get(0));
        }
    }

    @Test
    void anEventGivesLayersDemandAndSpan() throws IOException {
        Path event = folder.resolve("event");
        var rove = Fresh.event("Demo rove");
        Policies policies = rove.getPolicies() == null ? StraddleFactory.eINSTANCE.createPolicies() : rove.getPolicies();
        policies.setStationSpanM(30);
        rove.setPolicies(policies);
        var share = StraddleFactory.eINSTANCE.createDemand();
        share.setSquare("IP04");
        share.setSharePercent(40);
        rove.getDemands().add(share);
        EventFolder.create(event, rove).close();
        file("event/layers/roads.geojson", ROADS);
        file("event/layers/own/power-lines.geojson", WIRE);
        file("event/layers/coast.geojson", WIRE);
        Console run = Console.run("lines", event, "--format", "csv");
        List<String> rows = rows(run);
        assertEquals(2, rows.size(), run.out());
        assertTrue(rows.get(0).startsWith("0,0,crossing,20°W,HP95 IP05"), rows.get(0));
        assertTrue(rows.get(1).startsWith("-1.04,0.4,crossing,20°W,HP94 IP04") && rows.get(1).contains(",30,0,"), rows.get(1));
        assertTrue(run.err().contains("coast.geojson: left out 1 thing"), run.err());
    }

    @Test
    void aTableForPeopleAndAFileForTheReceiver() throws IOException {
        Path out = folder.resolve("places.gpx");
        Console run = Console.run("lines", file("roads.geojson", ROADS), "--out", out);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("2 places on 0 km of roads; station 10 m long, corners within 500 m"), run.out());
        assertTrue(run.out().contains("on the spot"), run.out());
        assertTrue(Files.readString(out).contains("<name>20°W Moor Road</name>"), Files.readString(out));
        Console again = Console.run("lines", folder.resolve("roads.geojson"), "--out", out);
        assertEquals(2, again.code());
        assertTrue(again.err().contains("exists"), again.err());
    }

    @Test
    void helpTellsHowPointsAreMadeUp() {
        Console help = Console.run("lines", "--help");
        assertEquals(0, help.code());
        // The weights that the help prints are those that count.
        for (String role : List.of("power-line", "quarry", "railway", "building", "road")) {
            Surroundings.Weight weight = Surroundings.usual(new MapRole(role));
            String points = number(weight.weight());
            assertTrue(help.out().replaceAll("\\s+", " ").matches(".*" + role + "( and building)? [+]?" + points + " within "
                    + number(weight.reachM()) + " m.*"), role);
        }
    }

    @Test
    void wrongInput() throws IOException {
        Path roads = file("roads.geojson", ROADS);
        Path swapped = file("swapped.geojson", "{\"type\":\"LineString\",\"coordinates\":[[64.5,-170],[64.5,-169]]}");
        refused("no such file", "lines", folder.resolve("nowhere.gpx"));
        refused("neither GPX nor GeoJSON", "lines", file("a.txt", "hello"));
        refused("--swap", "lines", swapped);
        assertEquals(0, Console.run("lines", swapped, "--swap").code());
        refused("span", "lines", roads, "--span", -1);
        refused("--near power", "lines", roads, "--near", "power");
        refused("--weight road=x", "lines", roads, "--weight", "road=x");
        refused("--top 0", "lines", roads, "--top", 0);
        refused("--out", "lines", roads, "--out", "x.kml");
        refused("less than a square", "lines", roads, "--in", "HP94bc");
        assertEquals(1, rows(Console.run("lines", roads, "--in", "hp94", "--format", "csv")).size());
        assertEquals(2, rows(Console.run("lines", roads, "--in", "HP", "--format", "csv")).size());
        assertEquals(0, rows(Console.run("lines", roads, "--in", "JO22,JO23", "--format", "csv")).size());
        refused("no roads", "lines", file("post.gpx", "<gpx><wpt lat='1' lon='2'/></gpx>"));
        Path without = file("without.geojson", "{\"type\":\"FeatureCollection\",\"features\":["
                + "{\"type\":\"Feature\",\"geometry\":null,\"properties\":{}},{\"type\":\"Feature\",\"geometry\":null,\"properties\":{}}]}");
        refused("a feature has no geometry", "lines", without);
        assertEquals(2, Console.run("lines", without).err().lines().count(), "a refusal is short");
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    private static void refused(String reason, Object... arguments) {
        Console run = Console.run(arguments);
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains(reason), run.err());
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
        assertEquals("", run.out());
    }
}
