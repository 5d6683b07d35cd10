package org.straddle.exchange.elements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.exchange.elements.Published.KVN_23581;
import static org.straddle.exchange.elements.Published.KVN_DEMO;
import static org.straddle.exchange.elements.Published.L1_00005;
import static org.straddle.exchange.elements.Published.L1_23581;
import static org.straddle.exchange.elements.Published.L2_00005;
import static org.straddle.exchange.elements.Published.L2_23581;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.sky.ElementSet;

class ElementSetReaderTest {

    private static ElementFile read(String text) throws ReadException {
        return ElementSetReader.read(new SourceFile("week", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static ReadException refused(String text, int line, String words) {
        ReadException e = assertThrows(ReadException.class, () -> read(text));
        assertEquals("week " + line, e.file() + " " + e.line(), e.getMessage());
        assertTrue(e.what().contains(words), e.getMessage());
        return e;
    }

    private static String labels(ElementFile file) {
        return file.format() + " " + file.sets().stream().map(ElementSet::label).toList();
    }

    // Two-line element sets

    @ParameterizedTest
    @CsvSource({"A|1|2,[A]", "1|2,[#5]", "0 A|1|2,[A]", "# comment||A|1|2||B|1|2|,'[A, B]'", "A|1|2|1|2,'[A, #5]'",
        "1 STAR|1|2,[1 STAR]", "2 STARS|1|2,[2 STARS]", "A|||1|#x|2,[A]"})
    void linesOfEveryArrangement(String sketch, String names) throws ReadException {
        String text = sketch.replaceAll("(^|\\|)1(?=\\|)", "$1" + L1_00005).replaceAll("(^|\\|)2(?=\\||$)", "$1" + L2_00005);
        assertEquals("TLE " + names, labels(read(text.replace("|", "\n"))));
        assertEquals("TLE " + names, labels(read("\uFEFF" + text.replace("|", "  \r\n") + "\r\n")));
    }

    @ParameterizedTest
    @CsvSource({"A|1,2,no second line", "A|1|2|B,4,no first line follows", "A|B|1|2,1,no first line follows",
        "1|2|2,3,without its first line", "1|2|1|1|2,3,no second line", "A|X|2,2,checksum", "1|Y,2,checksum",
        "1|2|A|1|Z,5,different objects", "1|2|1 00005U 58002B,3,no first line follows"})
    void firstBadLineIsNamed(String sketch, int line, String words) {
        String text = sketch.replaceAll("(^|\\|)1(?=\\||$)", "$1" + L1_00005).replaceAll("(^|\\|)2(?=\\||$)", "$1" + L2_00005)
                .replace("X", L1_00005.replace("179.78", "179.79")).replace("Y", L2_00005.replace("34.2682", "34.2683"))
                .replace("Z", L2_23581).replace("|", "\n");
        int expected = words.equals("different objects") ? line - 1 : line;
        refused(text, expected, words);
    }

    @Test
    void alpha5NumbersAreRead() throws ReadException {
        // A0001 is 100001; the letter adds nothing to the checksum, so 5 from 00005 becomes 1 and 0 A.
        String one = withChecksum(L1_00005.replace("00005U", "A0001U"));
        String two = withChecksum(L2_00005.replace("00005", "A0001"));
        assertEquals(100_001, read(one + "\n" + two).sets().get(0).catalogueNumber());
    }

    @Test
    void twoLineSetsForAnotherTheoryAreRefused() {
        String one = withChecksum(L1_00005.substring(0, 62) + "4" + L1_00005.substring(63));
        refused(one + "\n" + L2_00005, 1, "ephemeris type 4");
    }

    /** Sum of digits, minus counts one, modulo ten: as every description of the format says. */
    private static String withChecksum(String line) {
        int sum = line.substring(0, 68).chars().map(c -> Character.isDigit(c) ? c - '0' : c == '-' ? 1 : 0).sum();
        return line.substring(0, 68) + sum % 10;
    }

    // Orbit mean-elements messages

    @Test
    void theStandardsExampleGivesTheSameElementsAsTheTwoLinesBesideIt() throws ReadException {
        ElementSet message = read(KVN_23581).sets().get(0);
        ElementSet lines = ElementSet.ofTle("23581", L1_23581, L2_23581);
        // The lines round the epoch to 0.864 ms.
        assertTrue(Duration.between(message.epoch(), lines.epoch()).abs().toMillis() < 1);
        assertEquals(lines, withEpoch(message, lines.epoch()));
        assertEquals("DEMO/A", read(KVN_23581).origin());
    }

    private static ElementSet withEpoch(ElementSet s, Instant epoch) {
        return new ElementSet(s.name(), s.catalogueNumber(), s.internationalDesignator(), epoch, s.meanMotionRevPerDay(),
                s.eccentricity(), s.inclinationDeg(), s.raanDeg(), s.argumentOfPerigeeDeg(), s.meanAnomalyDeg(), s.bstar(),
                s.meanMotionDot(), s.meanMotionDdot(), s.elementSetNumber(), s.revolutionAtEpoch());
    }

    @Test
    void allWrittenFormsGiveTheSame() throws ReadException {
        for (String kvn : List.of(KVN_23581, KVN_DEMO)) {
            List<ElementSet> sets = read(kvn).sets();
            assertEquals(sets, read(Published.xml(kvn)).sets());
            assertEquals(sets, read("<?xml version='1.0'?>\n<ndm>" + Published.xml(kvn) + "</ndm>").sets());
            assertEquals(sets, read(Published.json(kvn)).sets());
            assertEquals(sets, read(Published.csv(kvn)).sets());
        }
        ElementSet demo = read(KVN_DEMO).sets().get(0);
        assertEquals("Tern-1 = \"x\" [P] <&> (demo)", demo.name());
        assertEquals("", demo.internationalDesignator());
        assertEquals(799_500_001, demo.catalogueNumber());
        assertEquals(247.75, demo.raanDeg());
        assertEquals(Instant.parse("2026-06-20T10:02:30.123456789Z"), demo.epoch());
    }

    @Test
    void manyInOneFile() throws ReadException {
        String xml = Published.xml(KVN_23581) + "<opm><NORAD_CAT_ID>1</NORAD_CAT_ID></opm>" + Published.xml(KVN_DEMO);
        String csv = Published.csv(KVN_23581);
        ElementFile two = read(KVN_23581 + KVN_DEMO);
        assertEquals("DEMO/A, DEMO", two.origin());
        assertEquals(two.sets(), read("<ndm xmlns:x='urn:x'>" + xml + "</ndm>").sets());
        assertEquals(two.sets(), read("[" + Published.json(KVN_23581) + "," + Published.json(KVN_DEMO) + "]").sets());
        assertEquals(2, read(csv + csv.lines().toList().get(1) + "\n").sets().size());
    }

    @Test
    void shortFormsInPublicUseLeaveOutWhatIsTheSameForAll() throws ReadException {
        String bare = KVN_23581.replaceAll("(?m)^(CENTER_NAME|REF_FRAME|TIME_SYSTEM|MEAN_ELEMENT_THEORY).*\n", "");
        assertEquals(read(KVN_23581).sets(), read(Published.json(bare)).sets());
        assertEquals(read(KVN_23581).sets(), read(Published.csv(bare)).sets());
        refused(bare, 1, "has no CENTER_NAME");
    }

    /** CCSDS 502.0-B-3, 4.2.4.6 and 4.2.4.7. */
    @ParameterizedTest
    @CsvSource({"CENTER_NAME = EARTH,CENTER_NAME = MARS,7", "REF_FRAME = TEME,REF_FRAME = GCRF,8",
        "TIME_SYSTEM = UTC,TIME_SYSTEM = GPS,9", "MEAN_ELEMENT_THEORY = SGP/SGP4,MEAN_ELEMENT_THEORY = SGP4-XP,10",
        "MEAN_ELEMENT_THEORY = SGP/SGP4,MEAN_ELEMENT_THEORY = DSST,10", "EPHEMERIS_TYPE = 0,EPHEMERIS_TYPE = 4,20",
        "BSTAR = 0.0001,BTERM = 0.0015,25", "MEAN_MOTION_DDOT = 0.0,AGOM = 0.01,27",
        "MEAN_MOTION = 1.00273272,SEMI_MAJOR_AXIS = 42164,13"})
    void elementsForAnotherTheoryFrameOrTimeAreRefused(String right, String other, int line) throws ReadException {
        String kvn = KVN_23581.replaceFirst("(?m)^" + right, other);
        ReadException e = refused(kvn, line, other.substring(0, other.indexOf(' ')));
        assertTrue(e.whatToDo().contains("SGP4"));
        assertEquals(e.what(), assertThrows(ReadException.class, () -> read(Published.xml(kvn))).what());
        assertEquals(e.what(), assertThrows(ReadException.class, () -> read(Published.json(kvn))).what());
        assertEquals(e.what(), assertThrows(ReadException.class, () -> read(Published.csv(kvn))).what());
    }

    @ParameterizedTest
    @CsvSource({"EPOCH = .*,EPOCH = 2007-02-30T00:00:00,12,not a time", "EPOCH = .*,EPOCH = 2007-064T10:34:60,12,not a time",
        "EPOCH = .*,EPOCH = yesterday,12,not a time", "EPOCH = .*,,1,has no EPOCH", "ECCENTRICITY = .*,ECCENTRICITY = NaN,14,not a number",
        "ECCENTRICITY = .*,ECCENTRICITY = 0x1p3,14,not a number", "ECCENTRICITY = .*,ECCENTRICITY = 1.5,1,eccentricity",
        "BSTAR = .*,,1,has no BSTAR", "NORAD_CAT_ID = .*,NORAD_CAT_ID = 12345678901,22,nine digits",
        "NORAD_CAT_ID = .*,NORAD_CAT_ID = A0001,22,nine digits", "INCLINATION = .*,INCLINATION = 0.05 [rad],15,not its unit",
        "MEAN_MOTION = .*,MEAN_MOTION = 1 [rad/s],13,not its unit", "GM = .*,OBJECT_ID = X,19,given twice", "GM = .*,hello,19,not a line like",
        "CCSDS_OMM_VERS = 3.0,CCSDS_OMM_VERS = 4.0,1,version 4.0", "CCSDS_OMM_VERS = 3.0,CCSDS_OPM_VERS = 3.0,1,not an orbit mean-elements"})
    void placeOfEveryFaultIsNamed(String right, String wrong, int line, String words) {
        refused(KVN_23581.replaceFirst("(?m)^" + right, wrong == null ? "" : wrong), line, words);
    }

    @Test
    void faultInTheSecondMessageIsNamed() {
        int lines = (int) KVN_23581.lines().count();
        String second = KVN_23581.replace("BSTAR = 0.0001", "BSTAR = much");
        refused(KVN_23581 + second, lines + 25, "BSTAR");
        String xml = "<ndm>\n" + Published.xml(KVN_23581) + Published.xml(second) + "</ndm>";
        int line = 1 + (int) xml.substring(0, xml.indexOf("much")).lines().count() - 1;
        refused(xml, line, "BSTAR");
        String json = "[" + Published.json(KVN_23581) + ",\n" + Published.json(second) + "]";
        refused(json, (int) json.substring(0, json.indexOf("much")).lines().count(), "BSTAR");
        String csv = Published.csv(KVN_23581) + "\n\n" + Published.csv(second).lines().toList().get(1) + "\n";
        refused(csv, 5, "BSTAR");
    }

    @ParameterizedTest
    @ValueSource(strings = {"hello", "a,b,c\n1,2,3", "<html/>", "{\"a\": 1}", "[1,2]", "[[]]", "[", "{}{}", "<ndm/>", "[]",
        "NORAD_CAT_ID,EPOCH\n", "NORAD_CAT_ID,EPOCH\n1,2,3", "NORAD_CAT_ID,EPOCH,EPOCH\n1,2,3", "NORAD_CAT_ID,EPOCH\n1,\"2",
        "# only a comment", "CCSDS_OMM_VERS = 2.0", "COMMENT x", "<omm version='2.0'><omm version='2.0'/></omm>"})
    void whatHoldsNoElementsIsRefused(String text) {
        ReadException e = assertThrows(ReadException.class, () -> read(text));
        assertEquals(2, e.getMessage().lines().count(), e.getMessage());
    }
}
