package org.straddle.exchange.sites;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.Snapshot;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

/** Invented sites around 64°N 20°W. A change is written as one line: "2 new Gate", "3 Gate: kind inside → line". */
class SiteImportTest {

    private final Event event = Fresh.event("Demo");
    private final AdapterFactoryEditingDomain domain =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());

    private Site site(String name, double latitudeDeg, double longitudeDeg, SiteKind kind, String... squares) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(latitudeDeg);
        site.setLongitudeDeg(longitudeDeg);
        site.setKind(kind);
        site.getSquares().addAll(List.of(squares));
        event.getSites().add(site);
        return site;
    }

    private static SourceTable table(String text) throws ReadException {
        return SourceTable.read("sites.csv", text.replace('~', '"').getBytes(StandardCharsets.UTF_8));
    }

    private SiteImport read(String text) throws ReadException {
        SourceTable table = table(text);
        SiteMapping mapping = SiteMapping.guess(table);
        return SiteImport.of(event, table, mapping, CoordinateOrder.OF_THE_FORMAT, mapping.usualKey());
    }

    private SiteImport read(String text, CoordinateOrder order, String key) throws ReadException {
        SourceTable table = table(text);
        return SiteImport.of(event, table, SiteMapping.guess(table), order, SiteKey.parse(key));
    }

    private static String told(SiteImport found) {
        return String.join("\n", found.changes().stream().map(SiteImportTest::told).toList());
    }

    private static String told(SiteChange change) {
        String start = change.line() + " ";
        if (change instanceof SiteChange.New added) {
            return start + "new " + sketch(added.site());
        }
        if (change instanceof SiteChange.Changed changed) {
            return start + changed.site().getName() + ": " + String.join("; ", changed.details().stream()
                    .map(detail -> detail.field().word() + " " + detail.was() + " → " + detail.now()).toList());
        }
        return start + (change instanceof SiteChange.Refused refused ? "refused " + refused.name() + ": " + refused.reason() : "same " + change.name());
    }

    private static String sketch(Site site) {
        return site.getName() + " " + site.getLatitudeDeg() + " " + site.getLongitudeDeg() + " " + site.getAltitudeM() + " ±"
                + site.getMarkErrorM() + " " + site.getKind() + " " + site.getSquares();
    }

    /** A tilde stands for a quotation mark. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "name,latitudeDeg,longitudeDeg       | Gate,64.5,-20.5                         | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "Lat.,Long.,Site name                | +64.5,-2.05e1,Gate                      | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "name;latitude;longitude             | Gate;64,5;-20,5                         | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "name,lat,lon                        | Gate,64°30'N,20°30'W                    | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "name,coordinates                    | Gate,~64°30'00~~N 20°30'00~~W~          | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "name,where                          | Gate,64.5 -20.5                         | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "a,b,c                               | Gate,64.5,-20.5                         | Gate 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "name,lat,lon,kind                   | Gate,64.5,-20.001,line                  | Gate 64.5 -20.001 0.0 ±5.0 line [HP94, IP04]",
        "name,lat,lon,kind                   | Gate,64.001,-20.001,Corner site         | Gate 64.001 -20.001 0.0 ±5.0 corner [HP93, IP03, HP94, IP04]",
        "name,lat,lon,squares                | Gate,64.5,-20,hp94/ip04                 | Gate 64.5 -20.0 0.0 ±5.0 line [HP94, IP04]",
        "name,lat,lon,ele,accuracy           | Gate,64.5,-20.5,120 m,3.5               | Gate 64.5 -20.5 120.0 ±3.5 inside [HP94]",
        "name,lat,lon,note                   | ~Gate, ~~north~~~,64.5,-20.5,x          | Gate, \"north\" 64.5 -20.5 0.0 ±5.0 inside [HP94]",
        "lat,lon                             | 64.5,-20.5                              | HP94sm 64.5 -20.5 0.0 ±5.0 inside [HP94]"})
    void newSites(String head, String row, String expected) throws ReadException {
        assertEquals("2 new " + expected, told(read(head + "\r\n" + row + "\r\n\r\n")));
    }

    @Test
    void aLocatorIsAsWideAsItIs() throws ReadException {
        // Half of 5′ by 2.5′ is 3.10 km by 2.32 km at 48.15°N, and the diagonal of that 3.87 km.
        assertEquals("2 new Gate 48.14583333333333 11.625 0.0 ±3871.0 inside [JN58]", told(read("name,locator\nGate,JN58td\n")));
    }

    @Test
    void whatChangesFieldByField() throws ReadException {
        site("Gate", 64.5, -20.001, SiteKind.INSIDE, "HP94");
        site("Bank", 64.5, -21, SiteKind.INSIDE, "HP94");
        SiteImport found = read("name,lat,lon,kind,squares,altitude\ngate,64.5,-20,line,HP94 IP04,\nBank,64.5,-21,,,0\nFell,64,-22,,,12\nMoor,x,1,,,\n");
        assertEquals("""
                2 Gate: name Gate → gate; position 64.5, -20.001 → decimal degrees: 64.500000° N, 20.000000° W, square IP04, 48.1 m away; \
                kind inside → line; squares HP94 → HP94 IP04
                3 same Bank
                4 new Fell 64.0 -22.0 12.0 ±5.0 corner [HP83, HP84, HP93, HP94]
                5 refused Moor: "x; 1" is not a latitude and a longitude""", told(found));
        assertEquals("1 new site, 1 changed, 1 unchanged, 1 line refused.", found.summary());
    }

    @Test
    void oneStepForUndo() throws ReadException {
        Site gate = site("Gate", 64.5, -20.001, SiteKind.INSIDE, "HP94");
        Event before = Snapshot.of(event);
        SiteImport found = read("name,lat,lon,kind,squares\nGate,64.5,-20,line,HP94 IP04\nFell,64,-22,,\n");
        assertTrue(org.eclipse.emf.ecore.util.EcoreUtil.equals(before, event), "a preview changes nothing");
        domain.getCommandStack().execute(found.command(domain));
        assertEquals("Gate 64.5 -20.0 0.0 ±5.0 line [HP94, IP04]", sketch(gate));
        assertEquals("Fell 64.0 -22.0 0.0 ±5.0 corner [HP83, HP84, HP93, HP94]", sketch(event.getSites().get(1)));
        domain.getCommandStack().undo();
        assertTrue(org.eclipse.emf.ecore.util.EcoreUtil.equals(before, event));
        assertFalse(domain.getCommandStack().canUndo());
        domain.getCommandStack().redo();
        assertEquals(2, event.getSites().size());
    }

    @Test
    void whichSiteALineIsAbout() throws ReadException {
        Site gate = site("Gate", 64.5, -20.001, SiteKind.INSIDE, "HP94");
        site("Twin", 64, -22, SiteKind.INSIDE, "HP94");
        site("twin ", 64.2, -22, SiteKind.INSIDE, "HP94");
        String rows = "name,lat,lon\nTwin,64,-22\nNear gate,64.5,-20.0011\nNear gate,64.5,-20.0012\n";
        assertEquals("2 refused Twin: the event has 2 sites of this name; match by id or by position\n3 new Near gate 64.5 -20.0011 0.0 ±5.0 inside [HP94]\n"
                + "4 refused Near gate: line 3 is about the same site", told(read(rows)));
        assertEquals("2 same Twin\n3 Gate: name Gate → Near gate; position 64.5, -20.001 → decimal degrees: 64.500000° N, 20.001100° W, square HP94, "
                + "4.8 m away\n4 refused Near gate: line 3 is about the same site", told(read(rows, CoordinateOrder.OF_THE_FORMAT, "10")));
        String other = "01234567-89ab-cdef-0123-456789abcdef";
        SiteImport byId = read("id,name,lat,lon\n" + gate.getId() + ",Gate,64.5,-20.001\n" + other + ",New,64,-21\n" + other + ",New,64,-21\n");
        assertEquals("2 same Gate\n3 new New 64.0 -21.0 0.0 ±5.0 line [HP93, HP94]\n4 refused New: line 3 is about the same site", told(byId));
        domain.getCommandStack().execute(byId.command(domain));
        assertEquals(other, event.getSites().get(3).getId());
    }

    /** Neither a kind nor squares are given: then what the mark allows is claimed, unless the mark is coarse. */
    @Test
    void aPointOnALineClaimsBothSquares() throws ReadException {
        assertEquals("2 new A 64.4 -20.0 0.0 ±5.0 line [HP94, IP04]\n3 new B 64.4 -20.01 0.0 ±5.0 inside [HP94]",
                told(read("name,lat,lon\nA,64.4,-20\nB,64.4,-20.01\n")));
        assertEquals("2 new C 64.4 -20.0 0.0 ±5.0 inside [IP04]", told(read("name,lat,lon,kind\nC,64.4,-20,inside\n")));
        assertTrue(told(read("name,locator\nD,HP94xx\n")).endsWith(" inside [HP94]"));
    }

    /** A coarse locator must not move a mark that was measured. */
    @Test
    void aLocatorThatHoldsTheMarkIsNoNews() throws ReadException {
        site("Gate", 64.5, -20.5, SiteKind.INSIDE, "HP94").setMarkErrorM(2);
        assertEquals("2 same Gate", told(read("name,locator\nGate,HP94sm\n")));
        assertTrue(told(read("name,locator\nGate,HP94rr\n")).startsWith("2 Gate: position 64.5, -20.5 → centre of locator HP94rr"));
    }

    @Test
    void blankCellsSayNothing() throws ReadException {
        Site gate = site("Gate", 64.5, -20.5, SiteKind.LINE, "HP94", "IP04");
        gate.setAltitudeM(12);
        gate.setMarkErrorM(2);
        assertEquals("2 same Gate", told(read("name,lat,lon,altitude,error,kind,squares\nGate,,,,,,\n")));
        assertEquals("2 Gate: squares HP94 IP04 → HP95", told(read("name,squares\nGate,HP95\n")));
        assertEquals("2 refused Gat: the event has no such site, and there is no position to make one", told(read("name,squares\nGat,HP95\n")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Gate,x,-20,,,            | \"x; -20\" is not a latitude and a longitude",
        "Gate,NaN,-20,,,          | \"NaN; -20\" is not a latitude and a longitude",
        "Gate,,-20,,,             | the latitude is missing",
        "Gate,64.5,,,,            | the longitude is missing",
        "Gate,91,-181,,,          | the latitude 91.0 is not between -90 and 90 degrees",
        "Gate,1,-181,,,           | the longitude -181.0 is not between -180 and 180 degrees",
        "Gate,64.5,-20,XX94,,     | \"XX94\" is not a locator",
        "Gate,64.5,-20,HP94 HP95 HP96,,| 3 squares are given; a site claims 1, 2 or 4",
        "Gate,64.5,-20,,pole,     | the kind \"pole\" is neither inside nor line nor corner",
        "Gate,64.5,-20,,,deep     | the altitude, m is \"deep\", which is not a number",
        "Gate\u001b[31m,64.5,-20,,,   | the name holds a control character (U+001B, character 5)",
        "Gate,64.5,-20,,,1e9      | the altitude, m is 1e9, which is not between -1000 and 100000"})
    void refusedLines(String row, String reason) throws ReadException {
        StringBuilder good = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            good.append("Site ").append(i).append(",1,2,JJ00,inside,5\n");
        }
        SiteImport found = read("name,lat,lon,squares,kind,ele\n" + good + row + "\n");
        String last = told(found.changes().get(9));
        assertTrue(last.startsWith("11 refused Gate") && last.contains(": " + reason), last);
        assertEquals(1, found.refused().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        // Out of range as written.
        "name,lat,lon    | A,120,50     | B,-140,60    | true",
        // One row is out of range, but another is near the event as written.
        "name,lat,lon    | A,95,-21     | B,64,-21     | false",
        // Both ways in range, but near the event only one way.
        "name,lat,lon    | A,-20.5,64.5 | B,-21,64     | true",
        "name,position   | A,~-20.5, 64~| B,~-21, 64~  | true",
        "name,lat,lon    | A,64.5,-20.5 | B,64,-21     | false",
        // Out of range either way.
        "name,lat,lon    | A,120,150    | B,64,-21     | false",
        // Far away both ways: nobody knows.
        "name,lat,lon    | A,10,20      | B,11,21      | false",
        // Letters leave no doubt.
        "name,lat,lon    | A,20S,64E    | B,21S,64E    | false"})
    void theSwapIsOffered(String head, String first, String second, boolean offered) throws ReadException {
        site("Gate", 64.5, -20.5, SiteKind.INSIDE, "HP94");
        assertEquals(offered, read(head + "\n" + first + "\n" + second + "\n").swapOffered());
    }

    @Test
    void swapped() throws ReadException {
        assertEquals("2 new Gate 50.0 120.0 0.0 ±5.0 corner [ON99, OO90, PN09, PO00]", told(read("name,lat,lon\nGate,120,50\n", CoordinateOrder.SWAPPED, "name")));
        assertEquals("2 new Gate 50.0 120.0 0.0 ±5.0 corner [ON99, OO90, PN09, PO00]", told(read("name,position\nGate,120 50\n", CoordinateOrder.SWAPPED, "name")));
        assertEquals("2 new Gate 50.0 120.0 0.0 ±5.0 corner [ON99, OO90, PN09, PO00]", told(read("name,position\nGate,50N 120E\n", CoordinateOrder.SWAPPED, "name")));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsWrittenComesBackUnchanged(SiteWriter.Format format) throws ReadException {
        site("Gate, \"north\" <&> é", 64.123456789012, -0.00000001, SiteKind.LINE, "IP94", "HP94").setAltitudeM(120.25);
        site("Four", 64, -20, SiteKind.CORNER, "HP93", "IP03", "HP94", "IP04").setMarkErrorM(1.5);
        site("Edge", -89.9999999, 179.9999999, SiteKind.INSIDE, "RA90");
        String text = SiteWriter.write(event.getSites(), format);
        assertEquals("0 new sites, 0 changed, 3 unchanged, 0 lines refused.", read(text).summary(), text);
        Map<String, String> before = sketches();
        event.getSites().clear();
        SiteImport found = read(text);
        domain.getCommandStack().execute(found.command(domain));
        if (format == SiteWriter.Format.CSV) {
            assertEquals(before, sketches());
        } else {
            assertEquals(before.keySet(), sketches().keySet());
            assertEquals(SiteKind.CORNER, event.getSites().get(1).getKind());
            assertEquals(120.25, event.getSites().get(0).getAltitudeM());
        }
    }

    private Map<String, String> sketches() {
        Map<String, String> all = new TreeMap<>();
        event.getSites().forEach(site -> all.put(site.getName(), sketch(site)));
        return all;
    }

    @Test
    void gpxAndGeoJsonOfOthers() throws ReadException {
        assertEquals("1 new Hut 64.5 -20.5 210.0 ±5.0 inside [HP94]\n3 new HP94sm 64.5 -20.5 0.0 ±5.0 inside [HP94]", told(read("""
                <gpx version="1.1"><wpt lat="64.5" lon="-20.5"><ele>210</ele><name>Hut</name><sym>House</sym>
                <extensions><name>Wrong</name></extensions></wpt>
                <wpt lat="64.5" lon="-20.5"/><trk><trkseg><trkpt lat="1" lon="2"/></trkseg></trk></gpx>
                """)));
        assertEquals(List.of("1 track or route is no site; bring them in as a layer of roads."),
                table("<gpx><wpt lat='1' lon='2'/><rte/></gpx>").remarks());
        assertEquals("1 new Hut 64.5 -20.5 210.0 ±5.0 line [HP94, IP04]", told(read("""
                {"type":"FeatureCollection","features":[{"type":"Feature","properties":{"title":"Hut","squares":["HP94","IP04"],"deep":{"a":[1]},"none":null},
                "geometry":{"type":"Point","coordinates":[-20.5,64.5,210]}},{"type":"Feature","properties":null,"geometry":null}]}
                """)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "' '                                  | the file is empty",
        "name,lat,lon                         | the table has no line below the first",
        "name,name,lat\\na,1,2                | names the column name twice",
        "name,lat\\na,1,2                     | line 2: the line has 3 values, but the first line names 2 columns",
        "64.5,-20.5\\n64.6,-20.6              | line 1: the first line holds values",
        "name,lat,lon\\n~a,1,2                | line 1: the table is damaged from here on: a quotation mark opens a value",
        "<gpx><trk/></gpx>                    | the file holds no points: 1 track or route",
        "<gpx><wpt lat=~1~/></gpx>            | line 1: a waypoint without the attribute lon",
        "<gpx><wpt lat=~1~ lon=~2~>           | line 1: this is not well-formed XML",
        "<kml/>                               | line 1: the XML is not GPX, but <kml>",
        "[1]                                  | GeoJSON is an object in braces",
        "{\"type\":\"Topology\"}              | the JSON holds no features",
        "{\"type\":\"FeatureCollection\",\"features\":[ | line 1: this is not well-formed JSON, or breaks off",
        "{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[]}} | line 1: a Point without a longitude",
        "{\"crs\":{\"name\":\"EPSG:3857\"}}   | the coordinates are in EPSG:3857"})
    void whatIsNoTable(String text, String complaint) {
        ReadException e = assertThrows(ReadException.class, () -> table(text.replace("\\n", "\n")));
        assertTrue(e.getMessage().contains(complaint), e.getMessage());
        assertFalse(e.whatToDo().isBlank());
    }

    @Test
    void theUserChangesWhatAColumnMeans() throws ReadException {
        SourceTable table = table("name,other,lat,lon,place\nA,B,1,2,JJ00aa\n");
        SiteMapping guessed = SiteMapping.guess(table);
        assertEquals("{name=NAME, lat=LATITUDE, lon=LONGITUDE}", guessed.fields().toString());
        SiteMapping other = guessed.with("other", SiteField.NAME);
        assertEquals("{lat=LATITUDE, lon=LONGITUDE, other=NAME}", other.fields().toString());
        assertTrue(guessed.with("lat", null).problem(SiteKey.NAME).orElseThrow().contains("none for the latitude"));
        assertTrue(guessed.with("place", SiteField.POSITION).problem(SiteKey.NAME).orElseThrow().contains("choose one way"));
        assertTrue(guessed.with("name", null).problem(SiteKey.NAME).orElseThrow().contains("name"));
        assertTrue(guessed.problem(SiteKey.ID).orElseThrow().contains("id"));
        assertEquals(java.util.Optional.empty(), guessed.with("name", null).problem(SiteKey.within(5)));
        assertThrows(IllegalArgumentException.class, () -> SiteKey.parse("near"));
        assertThrows(IllegalArgumentException.class, () -> SiteKey.parse("0"));
        assertThrows(IllegalArgumentException.class, () -> SiteField.parse("colour"));
        assertThrows(IllegalArgumentException.class, () -> SiteImport.of(event, table, guessed, CoordinateOrder.OF_THE_FORMAT, SiteKey.ID));
    }
}
