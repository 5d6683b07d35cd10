package org.straddle.ui.passes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.nebula.widgets.nattable.sort.SortDirectionEnum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Bird;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.outlook.SitePass;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Pass;

class PassOrderTest {

    private static final int SITE = 0;
    private static final int PEAK = 9;

    /** Verification vector 00005 of the published SGP4 test set (AIAA 2006-6753). */
    private static final ElementSet BIRD = ElementSet.ofTle("",
            "1 00005U 58002B   00179.78495062  .00000023  00000-0  28098-4 0  4753",
            "2 00005  34.2682 348.7242 1859667 331.7664  19.3264 10.82419157413667");

    private final PassOrder order = new PassOrder(() -> { });

    @Test
    void withoutAChoicePassesStandInTime() {
        assertEquals("b10 a20 b30", sorted("b10:5", "b30:70", "a20:40"));
    }

    @Test
    void sortsByAColumnAndTiesStandInTime() {
        order.sort(SITE, SortDirectionEnum.ASC, false);
        assertEquals("a20 b10 b30", sorted("b30:70", "b10:5", "a20:40"));
        order.sort(SITE, SortDirectionEnum.DESC, false);
        assertEquals("b10 b30 a20", sorted("b30:70", "b10:5", "a20:40"));
    }

    @Test
    void numbersSortAsNumbers() {
        order.sort(PEAK, SortDirectionEnum.DESC, false);
        assertEquals("b30 a20 b10", sorted("b10:5", "b30:70", "a20:40"));
    }

    @Test
    void aSecondColumnBreaksTies() {
        order.sort(SITE, SortDirectionEnum.ASC, false);
        order.sort(PEAK, SortDirectionEnum.DESC, true);
        assertEquals("a20 b30 b10", sorted("b10:5", "b30:70", "a20:40"));
        assertEquals(List.of(SITE, PEAK), order.getSortedColumnIndexes());
        order.clear();
        assertEquals("b10 a20 b30", sorted("b10:5", "b30:70", "a20:40"));
    }

    /** RFC 4180, section 2: fields with commas or quotes stand in quotes, quotes are doubled, lines end in CRLF. */
    @Test
    void csvQuotesWhatNeedsIt(@TempDir Path folder) throws Exception {
        PassRow row = row("x30:70");
        row.found().site().setName("Quay, \"north\"");
        PassCsv.write(folder.resolve("passes.csv"), List.of(row));
        String text = Files.readString(folder.resolve("passes.csv"));
        assertEquals(2, text.split("\r\n").length);
        String second = text.split("\r\n")[1];
        assertEquals("\"Quay, \"\"north\"\"\",Tern-1 (demo),2027-06-18T00:30:00Z,2027-06-18T00:34:00Z,"
                + "2027-06-18T00:38:00Z,2027-06-18T02:30+02:00,480,10.0,20.0,30.0,70.0,", second);
    }

    private String sorted(String... passes) {
        return String.join(" ", Stream.of(passes).map(PassOrderTest::row).sorted(order.comparator())
                .map(row -> row.found().site().getName() + row.found().pass().aos().toString().substring(14, 16))
                .toList());
    }

    /** Notation: site, minute of AOS, colon, peak elevation. */
    private static PassRow row(String notation) {
        Site site = Fresh.site();
        site.setName(notation.substring(0, 1));
        Bird bird = Fresh.bird();
        bird.setName("Tern-1 (demo)");
        Instant aos = Instant.parse("2027-06-18T00:" + notation.substring(1, 3) + ":00Z");
        Pass pass = new Pass(BIRD, aos, aos.plusSeconds(240), aos.plusSeconds(480), 10, 20, 30,
                Double.parseDouble(notation.substring(4)), 900, true, false, false);
        return new PassRow(new SitePass(site, bird, pass), ZoneId.of("Europe/Oslo"), "");
    }
}
