package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.store.EventFolder;

/** Sites and layers in and out; invented places around 64°N 20°W. */
class ImportCommandTest {

    @TempDir
    private Path folder;
    private Path event;

    @BeforeEach
    void anEvent() throws IOException {
        event = folder.resolve("event");
        Event rove = Fresh.event("Demo rove");
        Site gate = Fresh.site();
        gate.setName("Gate");
        gate.setLatitudeDeg(64.5);
        gate.setLongitudeDeg(-20.001);
        gate.getSquares().add("HP94");
        rove.getSites().add(gate);
        EventFolder.create(event, rove).close();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private List<String> sites() throws IOException {
        try (EventFolder opened = EventFolder.openReadOnly(event)) {
            return opened.event().getSites().stream().map(site -> site.getName() + " " + site.getLatitudeDeg() + " " + site.getLongitudeDeg()).toList();
        }
    }

    private static Console done(Object... arguments) {
        Console run = Console.run(arguments);
        assertEquals(0, run.code(), run.err());
        return run;
    }

    private void refused(String reason, Object... arguments) throws IOException {
        List<String> before = sites();
        Console run = Console.run(arguments);
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains(reason), run.err());
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
        assertEquals(before, sites());
    }

    @Test
    void aPreviewThenTheChange() throws IOException {
        Path table = file("sites.csv", "Site,Lat,Lon,Note\nGate,64.5,-20,x\nFell,64,-22,y\n");
        Console dry = done("import", event, table, "--dry-run");
        assertTrue(dry.out().contains("Columns: Site → name, Lat → latitude, Lon → longitude; ignored: Note"), dry.out());
        assertTrue(dry.out().contains("1 new site, 1 changed, 0 unchanged, 0 lines refused.\nNothing was changed."), dry.out());
        assertEquals(List.of("Gate 64.5 -20.001"), sites());
        Console rows = done("import", event, table, "--format", "csv");
        assertEquals("2,changed,Gate,position,\"64.5, -20.001\",\"decimal degrees: 64.500000° N, 20.000000° W, square IP04, 48.1 m away\"",
                rows.out().lines().skip(1).findFirst().orElseThrow());
        assertEquals(List.of("Gate 64.5 -20.0", "Fell 64.0 -22.0"), sites());
        assertTrue(done("import", event, table).out().contains("0 new sites, 0 changed, 2 unchanged"));
    }

    @Test
    void columnsAndMatchingByTheUser() throws IOException {
        Path table = file("sites.csv", "a,b\nNew gate,64.5 -20.001\n");
        assertTrue(done("import", event, table, "--map", "a=name", "--map", "b=position", "--match", "20").out().contains("1 changed"));
        assertEquals(List.of("New gate 64.5 -20.001"), sites());
        refused("no column c", "import", event, table, "--map", "c=name");
        refused("colour", "import", event, table, "--map", "a=colour");
        refused("No column holds the id", "import", event, table, "--match", "id");
        refused("No column holds the name", "import", event, table, "--map", "a=none", "--match", "name");
        refused("neither name nor id", "import", event, table, "--match", "near");
    }

    @Test
    void aBadLineChangesNothingUnlessItMayBeLeftOut() throws IOException {
        Path table = file("sites.csv", "name,lat,lon\nFell,64,-22\nMoor,64,x\nHut,64,-21\n");
        refused("sites.csv, line 3", "import", event, table);
        assertTrue(done("import", event, table, "--partial").out().contains("2 new sites, 0 changed, 0 unchanged, 1 line refused."));
        assertEquals(3, sites().size());
    }

    @Test
    void aBadLineOfChasersChangesNothingUnlessItMayBeLeftOut() throws Exception {
        Path good = file("good.txt", "NEED Q0AAA IO91wm HP94 IP04\n");
        Path bad = file("bad.txt", "Hello all,\nNEED Q0BBB\n> NEED Q0CCC IP03 HP94\nNEED Q0DDD nowhere HP94\n");
        Console refused = Console.run("import", event, good, bad, "--chasers");
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("bad.txt, line 2: ")
                && refused.err().contains("2 lines cannot be read, and nothing was imported."), refused.err());
        assertEquals(2, refused.err().lines().count(), refused.err());
        assertEquals(List.of(), chasers());
        String each = done("import", event, good, bad, "--chasers", "--partial", "--dry-run").err();
        assertTrue(each.contains("bad.txt, line 2: ") && each.contains("bad.txt, line 4: "), each);
        assertEquals(List.of(), chasers());
        Console partly = done("import", event, good, bad, "--chasers", "--partial");
        assertTrue(partly.err().contains("bad.txt, line 2: ") && partly.err().contains("This line is left out."), partly.err());
        assertEquals(List.of("Q0AAA HP94 IP04", "Q0CCC HP94"), chasers());
    }

    private List<String> chasers() throws Exception {
        try (EventFolder opened = EventFolder.openReadOnly(event)) {
            return opened.event().getChaserList().stream()
                    .map(chaser -> chaser.getCallSign() + " " + String.join(" ", chaser.getSquares())).toList();
        }
    }

    @Test
    void theSwapIsOffered() throws IOException {
        Path near = file("near.csv", "name,lat,lon\nFell,-22,64\n");
        refused("--swap", "import", event, near);
        done("import", event, near, "--swap");
        assertEquals(List.of("Gate 64.5 -20.001", "Fell 64.0 -22.0"), sites());
        done("import", event, near, "--no-swap");
        assertEquals("Fell -22.0 64.0", sites().get(1));
        refused("--swap", "import", event, file("far.csv", "name,lat,lon\nFell,122,50\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "gpx", "geojson"})
    void whatGoesOutComesInUnchanged(String format) throws IOException {
        Path out = folder.resolve("sites." + format);
        done("export", event, "--out", out);
        assertTrue(done("import", event, out).out().contains("0 new sites, 0 changed, 1 unchanged, 0 lines refused."));
        assertEquals(Files.readString(out), done("export", event, "--format", format).out());
        refused("exists", "export", event, "--out", out);
    }

    @Test
    void layersWithRoles() throws IOException {
        String roads = "{\"type\":\"LineString\",\"coordinates\":[[-20.001,64.5],[-19.999,64.5]]}";
        assertTrue(done("import", event, file("net.geojson", roads), "--layer", "road", "--title", "All roads").out()
                .contains("net.geojson: 1 thing as a layer: roads to scout."));
        done("import", event, file("wire.geojson", roads.replace("64.5", "64.501")), "--layer", "Power lines");
        Console lines = done("lines", event, "--format", "csv");
        assertEquals(1, lines.out().lines().skip(1).count(), lines.out());
        assertTrue(lines.out().contains("powerLineM"), lines.out());
        Path tracks = folder.resolve("net.gpx");
        done("export", event, "--layer", "all roads", "--out", tracks);
        assertTrue(Files.readString(tracks).contains("<trkpt lat=\"64.5000000\" lon=\"-20.0010000\"/>"));
        refused("not a role", "import", event, tracks, "--layer", "no: role");
        refused("--swap", "import", event, file("swapped.geojson", "{\"type\":\"LineString\",\"coordinates\":[[64.5,-20],[64.5,-21]]}"),
                "--layer", "road");
        refused("bad.gpx, line 1", "import", event, file("bad.gpx", "<gpx><trk>"), "--layer", "road");
        assertEquals(List.of("net.geojson", "wire.geojson"), List.of(event.resolve("layers").toFile().list()).stream().sorted().toList());
    }

    @Test
    void theWayOfATeam() throws IOException {
        Path demo = EventCopy.ofDemo(folder.resolve("demo"));
        String route = done("export", demo, "--team", 1).out();
        assertTrue(route.contains("<rte>") && route.contains("<rtept"), route);
        assertTrue(done("lines", file("route.gpx", route)).out().contains("places on"));
        Console wrong = Console.run("export", demo, "--team", 9);
        assertEquals(2, wrong.code());
    }

    @Test
    void filesOfDifferentKinds() throws IOException {
        Path sites = file("sites.csv", "name,lat,lon\nFell,64,-22\n");
        Path elements = file("birds.tle", "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753\n"
                + "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667\n");
        refused("different things", "import", event, sites, elements);
        refused("no points: 1 track or route", "import", event, file("track.gpx", "<gpx><trk/></gpx>"));
        refused("empty", "import", event, file("empty.csv", ""));
        assertTrue(done("import", event, elements, "--dry-run").out().contains("Nothing was changed."));
    }
}
