package org.straddle.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.model.Site;

class SiteTableTest {

    private static final String HEAD = "name,latitudeDeg,longitudeDeg,squares,kind\n";

    private static List<Site> read(String text) throws ReadException {
        return read(text, CoordinateOrder.OF_THE_FORMAT);
    }

    private static List<Site> read(String text, CoordinateOrder order) throws ReadException {
        return SiteTable.read(new SourceFile("sites.csv", text.getBytes(StandardCharsets.UTF_8)), order);
    }

    private static ReadException refused(byte[] bytes) {
        return assertThrows(ReadException.class, () -> SiteTable.read(new SourceFile("sites.csv", bytes), CoordinateOrder.OF_THE_FORMAT));
    }

    private static ReadException refused(String text) {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String sketch(Site site) {
        return site.getName() + " " + site.getLatitudeDeg() + " " + site.getLongitudeDeg() + " " + site.getKind() + " " + site.getSquares();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Gate,64.5,-20.5,,                    | Gate 64.5 -20.5 inside [HP94]",
        "Gate,64.5,-20,HP94 IP04,             | Gate 64.5 -20.0 line [HP94, IP04]",
        "Gate,64,-20,hp94/ip04/HP93/IP03,     | Gate 64.0 -20.0 corner [HP94, IP04, HP93, IP03]",
        "Gate,+64.5,-2.05e1,HP94,Inside       | Gate 64.5 -20.5 inside [HP94]",
        "'Gate, \"\"north\"\"',64.5,-20.5,,   | Gate, \"north\" 64.5 -20.5 inside [HP94]"})
    void sites(String row, String expected) throws ReadException {
        assertEquals(expected, sketch(read(HEAD + row.replace('\'', '"')).get(0)));
    }

    @Test
    void columnsInAnyOrderAndOthersToo() throws ReadException {
        Site site = read("\uFEFFNote,LongitudeDeg,LATITUDEDEG,Name,altitudem\r\nx,-20.5,64.5,Gate,120\r\n\r\n").get(0);
        assertEquals("Gate 64.5 -20.5 inside [HP94]", sketch(site));
        assertEquals(120, site.getAltitudeM());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Gate,x,-20,,            | 3 | latitudeDeg is \"x\"",
        "Gate,NaN,-20,,          | 3 | latitudeDeg is \"NaN\"",
        "Gate,,-20,,             | 3 | latitudeDeg is \"\"",
        "Gate,'64,5',-20,,       | 3 | latitudeDeg is \"64,5\"",
        "Gate,90.5,-120,,        | 3 | latitude 90.5",
        "Gate,64.5,-20           | 3 | 3 values",
        "Gate,64.5,-20,XX94,     | 3 | XX94",
        "Gate,64.5,-20,,pole     | 3 | pole",
        "Gate,64.5,-20,'HP94,    | 1 | damaged"})
    void whatIsWrong(String row, int line, String complaint) {
        ReadException e = refused(HEAD + "First,1,2,,\n" + row.replace('\'', '"'));
        assertTrue(e.what().contains(complaint), e.getMessage());
        assertTrue(e.line() >= line && e.line() <= 3, e.getMessage());
    }

    @Test
    void theSwapIsOffered() throws ReadException {
        assertTrue(assertInstanceOf(CoordinateOutOfRange.class, refused(HEAD + "Gate,120,50,,").getCause()).fitsSwapped());
        assertEquals("Gate 50.0 120.0", sketch(read(HEAD + "Gate,120,50,,", CoordinateOrder.SWAPPED).get(0)).substring(0, 15));
    }

    @Test
    void whatIsNoTable() {
        assertTrue(refused("").what().contains("empty"));
        assertTrue(refused(HEAD).what().contains("no sites"));
        assertTrue(refused("name,lat\nx,1").what().contains("no column latitudeDeg"));
        refused(HEAD.replace("squares", "name") + "a,1,2,3,4");
        refused(HEAD + "\0");
        byte[] noise = new byte[1 << 20];
        new Random(1).nextBytes(noise);
        refused(noise);
        refused(new byte[17 << 20]);
        refused((HEAD + "é,1,2,,").getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void whatIsWrittenIsReadBack() throws ReadException {
        List<Site> sites = read(HEAD + "\"Gate, \"\"north\"\"\nlow\",64.123456789012,-0.00000001,HP94 IP04,corner\nB,1,2,,\n");
        String text = SiteTable.write(sites);
        assertTrue(text.startsWith("name,latitudeDeg,longitudeDeg,altitudeM,kind,squares\r\n"), text);
        List<Site> again = read(text);
        assertEquals(sites.stream().map(SiteTableTest::sketch).toList(), again.stream().map(SiteTableTest::sketch).toList());
    }
}
