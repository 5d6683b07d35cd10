package org.straddle.exchange.sites;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.ReadException;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;

/** What goes out in a cell is text to every program, and comes back as it was. */
class CsvCellTest {

    private static final int TEXTS = 4000;
    private static final long SEED = 11;

    /** Pieces whose order and neighbours decide. */
    private static final List<String> PIECES = List.of("=", "+", "-", "@", "'", "\t", "\r", "\n", " ", "\u00A0", "\u2003", "\\", "u", "\\u",
            "\\u001b", "\\u005c", "001b", "\"", ",", ";", "a", "Z", "9", "\u001B", "\u0000", "\u0007", "\u007F", "\u009B", "\u009D", "\u0085",
            "\u2028", "\u2029", "\u202E", "\u2066", "\u2069", "\uD800", "\uDC00", "𝄞", "ð", "\uFF1D", "\uFEFF", "cmd|' /C x'!A0");

    static List<String> texts() {
        Random random = new Random(SEED);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < TEXTS; i++) {
            StringBuilder text = new StringBuilder();
            for (int pieces = 1 + random.nextInt(8); pieces > 0; pieces--) {
                text.append(PIECES.get(random.nextInt(PIECES.size())));
            }
            texts.add(text.toString());
        }
        return texts;
    }

    @Test
    void everyTextComesBackAndNoneActs() {
        for (String text : texts()) {
            String cell = CsvCell.of(text);
            assertEquals(text, CsvCell.read(cell));
            assertEquals(cell, cell.strip());
            assertTrue(InertText.isPlain(cell.replace("\n", "").replace("\t", "")), cell);
            assertTrue(cell.isEmpty() || "=+-@\t\r\n\uFF1D".indexOf(cell.charAt(0)) < 0, cell);
        }
    }

    /** The list of beginnings is that of OWASP, "CSV Injection". */
    @ParameterizedTest
    @ValueSource(strings = { "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1" })
    void whatBeginsAFormulaIsProtected(String text) {
        char first = CsvCell.of(text).charAt(0);
        assertTrue(first == '\'' || first == '\\', () -> CsvCell.of(text));
    }

    @Test
    void ordinaryTextStaysAsItIs() {
        assertEquals("Gate, north", CsvCell.of("Gate, north"));
        assertEquals("it's 5 - 3 = 2", CsvCell.of("it's 5 - 3 = 2"));
        assertEquals("'tis", CsvCell.read("'tis"));
        assertEquals("C:\\users", CsvCell.read("C:\\users"));
    }

    /** A whole way: sites out, and in again, through the file, with all that an event can store. */
    @ParameterizedTest
    @EnumSource(SiteWriter.Format.class)
    void namesComeBackThroughOurOwnImport(SiteWriter.Format format) throws ReadException {
        Event event = StraddleFactory.eINSTANCE.createEvent();
        List<String> names = texts().stream().filter(name -> InertText.firstNotStorable(name) < 0)
                .filter(name -> !name.isBlank() && !name.startsWith("\uFEFF"))
                .filter(name -> format == SiteWriter.Format.CSV || name.equals(name.replaceAll("\\s+", " ").strip())).distinct().limit(1500).toList();
        assertTrue(names.size() > 300, () -> "only " + names.size());
        for (String name : names) {
            Site site = Fresh.site();
            site.setName(name);
            site.setLatitudeDeg(64);
            site.setLongitudeDeg(-20);
            site.getSquares().addAll(List.of("HP94"));
            event.getSites().add(site);
        }
        String text = SiteWriter.write(event.getSites(), format);
        assertTrue(InertText.isPlain(text.replaceAll("[\r\n\t]", "")));
        SourceTable table = SourceTable.read("sites", text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        String column = SiteMapping.guess(table).column(SiteField.NAME).orElseThrow();
        List<String> read = table.rows().stream().map(row -> table.value(row, column)).toList();
        IntStream.range(0, names.size()).forEach(i -> assertEquals(names.get(i), read.get(i)));
    }

    /** What import refuses is not written; the word names the site. */
    @ParameterizedTest
    @EnumSource(SiteWriter.Format.class)
    void whatImportRefusesIsNotWritten(SiteWriter.Format format) {
        for (String name : List.of("n".repeat(2001), "m".repeat(201), "Nowhere", "Too high", "Esc here\u001B")) {
            Site site = Fresh.site();
            site.setName(name);
            site.setLatitudeDeg(name.equals("Nowhere") ? 95 : 64);
            site.setLongitudeDeg(-20);
            site.setAltitudeM(name.equals("Too high") ? 200_000 : 10);
            site.getSquares().add("HP94");
            IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                    () -> SiteWriter.write(List.of(site), format), name);
            assertTrue(refused.getMessage().contains(name.substring(0, 7)), refused.getMessage());
            assertTrue(refused.getMessage().lines().count() <= 2, refused.getMessage());
        }
    }
}
