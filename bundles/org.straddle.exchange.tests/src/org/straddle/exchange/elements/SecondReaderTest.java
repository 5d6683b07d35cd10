package org.straddle.exchange.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.orekit.bodies.CelestialBody;
import org.orekit.data.DataSource;
import org.orekit.data.LazyLoadedDataContext;
import org.orekit.files.ccsds.ndm.ParserBuilder;
import org.orekit.files.ccsds.ndm.odm.omm.Omm;
import org.orekit.propagation.analytical.tle.TLE;
import org.orekit.time.AbsoluteDate;
import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;
import org.orekit.time.TimeScale;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.ElementSet;

/** What we read and write, read a second time by the parsers of Orekit 13.1, which follow CCSDS 502.0-B-3. */
class SecondReaderTest {

    private final LazyLoadedDataContext context = new LazyLoadedDataContext();
    private final TimeScale utc;

    SecondReaderTest() {
        // Enough for epochs after 2017: UTC is 37 s behind TAI since then (IERS Bulletin C 52).
        context.getTimeScales().addUTCTAIOffsetsLoader(() -> List.of(new OffsetModel(new DateComponents(1972, 1, 1), 10),
                new OffsetModel(new DateComponents(2017, 1, 1), 37)));
        utc = context.getTimeScales().getUTC();
        CelestialBody earth = (CelestialBody) Proxy.newProxyInstance(getClass().getClassLoader(),
                new Class<?>[] {CelestialBody.class},
                (proxy, method, arguments) -> method.getName().equals("getGM") ? (Object) 3.986008e14 : "EARTH");
        context.getCelestialBodies().addCelestialBodyLoader("EARTH", name -> earth);
        context.getCelestialBodies().addCelestialBodyLoader("Earth", name -> earth);
    }

    private static List<ElementSet> invented(int count) {
        Random random = new Random(5);
        List<ElementSet> sets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sets.add(new ElementSet("Tern-" + i + " (demo) <&>", 90_000 + i, "2026-00" + (1 + i % 9) + "A",
                    Instant.parse("2026-06-20T00:00:00Z").plusNanos(random.nextInt(1_000_000_000) * 86_400L),
                    12 + 4 * random.nextDouble(), random.nextDouble() * 0.1, random.nextDouble() * 180, random.nextDouble() * 360,
                    random.nextDouble() * 360, random.nextDouble() * 360, (random.nextDouble() - 0.5) * 1e-3,
                    (random.nextDouble() - 0.5) * 1e-4, (random.nextDouble() - 0.5) * 1e-9, random.nextInt(1000),
                    random.nextInt(99_999)));
        }
        return sets;
    }

    private static List<ElementSet> read(String text) throws ReadException {
        return ElementSetReader.read(new SourceFile("x", text.getBytes(StandardCharsets.UTF_8))).sets();
    }

    private Omm parsed(String text) {
        return new ParserBuilder(context).withMu(3.986008e14).buildOmmParser().parseMessage(new DataSource("x.omm",
                () -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8))));
    }

    private void assertSame(ElementSet ours, Omm theirs) {
        double perDay = 2 * Math.PI / 86_400;
        var elements = theirs.getData().getKeplerianElementsBlock();
        var tle = theirs.getData().getTLEBlock();
        // Theirs are in capitals.
        assertEquals(ours.name().toUpperCase(Locale.ROOT), theirs.getMetadata().getObjectName().toUpperCase(Locale.ROOT));
        assertEquals(ours.internationalDesignator(), theirs.getMetadata().getObjectID());
        assertEquals(ours.catalogueNumber(), tle.getNoradID());
        assertEquals(ours.elementSetNumber(), tle.getElementSetNumber());
        assertEquals(ours.revolutionAtEpoch(), tle.getRevAtEpoch());
        assertEquals(0, theirs.getDate().durationFrom(new AbsoluteDate(ours.epoch(), utc)), 1e-9);
        assertEquals(ours.meanMotionRevPerDay(), elements.getMeanMotion() / perDay, 1e-13 * 16);
        assertEquals(ours.eccentricity(), elements.getE());
        assertEquals(ours.inclinationDeg(), Math.toDegrees(elements.getI()), 1e-12 * 180);
        assertEquals(ours.raanDeg(), Math.toDegrees(elements.getRaan()), 1e-12 * 360);
        assertEquals(ours.argumentOfPerigeeDeg(), Math.toDegrees(elements.getPa()), 1e-12 * 360);
        assertEquals(ours.meanAnomalyDeg(), Math.toDegrees(elements.getAnomaly()), 1e-12 * 360);
        assertEquals(ours.bstar(), tle.getBStar(), 1e-15);
        // Theirs are true derivatives: the message carries a half and a sixth of them, as the lines do.
        assertEquals(ours.meanMotionDot(), tle.getMeanMotionDot() / (perDay / 86_400) / 2, 1e-15);
        assertEquals(ours.meanMotionDdot(), tle.getMeanMotionDotDot() / (perDay / 86_400 / 86_400) / 6, 1e-20);
    }

    @Test
    void messagesWeWrite() throws ReadException {
        for (ElementSet set : invented(40)) {
            String kvn = ElementWriter.ommKvn(List.of(set), "DEMO", Instant.EPOCH);
            assertSame(set, parsed(kvn));
            assertEquals(List.of(set), read(kvn));
            String xml = ElementWriter.ommXml(List.of(set), "DEMO", Instant.EPOCH);
            assertEquals(List.of(set), read(xml));
            assertSame(set, parsed(xml.replaceAll("</?ndm>\n", "")));
        }
    }

    @Test
    void theStandardsExample() throws ReadException {
        String kvn = Published.KVN_23581.replace("2007-", "2027-");
        assertSame(read(kvn).get(0), parsed(kvn));
        assertSame(read(kvn).get(0), parsed("<?xml version=\"1.0\"?>\n" + Published.xml(kvn)));
    }

    @Test
    void linesWeWrite() throws ReadException {
        List<ElementSet> sets = invented(40);
        String text = ElementWriter.tle(sets);
        List<ElementSet> back = read(text);
        assertEquals(text, ElementWriter.tle(back));
        List<String> lines = text.lines().toList();
        for (int i = 0; i < sets.size(); i++) {
            TLE.isFormatOK(lines.get(3 * i + 1), lines.get(3 * i + 2));
            TLE theirs = new TLE(lines.get(3 * i + 1), lines.get(3 * i + 2), utc);
            assertEquals(sets.get(i).catalogueNumber(), theirs.getSatelliteNumber());
            assertEquals(sets.get(i).inclinationDeg(), Math.toDegrees(theirs.getI()), 0.00005);
            assertEquals(sets.get(i).meanMotionRevPerDay(), theirs.getMeanMotion() * 86_400 / (2 * Math.PI), 5.1e-9);
            assertEquals(sets.get(i).bstar(), theirs.getBStar(), 5e-9);
            assertEquals(sets.get(i).name(), back.get(i).name());
        }
    }

    @Test
    void aNameCannotBreakOutOfItsLine() throws ReadException {
        ElementSet set = invented(1).get(0);
        ElementSet trap = new ElementSet("A\nNORAD_CAT_ID = 1\u2028\r\nB", set.catalogueNumber(), "", set.epoch(),
                set.meanMotionRevPerDay(), set.eccentricity(), set.inclinationDeg(), set.raanDeg(), set.argumentOfPerigeeDeg(),
                set.meanAnomalyDeg(), set.bstar(), 0, 0, 0, 0);
        for (String text : List.of(ElementWriter.ommKvn(List.of(trap), "X\nY", Instant.EPOCH),
                ElementWriter.ommXml(List.of(trap), "X\nY", Instant.EPOCH), ElementWriter.tle(List.of(trap)))) {
            ElementSet back = read(text).get(0);
            assertEquals("A NORAD_CAT_ID = 1 B", back.name());
            assertEquals(set.catalogueNumber(), back.catalogueNumber());
        }
    }
}
