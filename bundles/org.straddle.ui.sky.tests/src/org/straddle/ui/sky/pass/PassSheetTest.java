package org.straddle.ui.sky.pass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.SheetWords.Fact;
import org.straddle.ui.sky.pass.SheetWords.MomentRow;

/** The sheet of the demo's passes agrees with the passes. */
class PassSheetTest {

    private static final Outlook OUTLOOK = Outlook.of(DemoEvent.create(), null);

    @Test
    void everyPassHasASheetThatAgreesWithIt() {
        List<SitePass> passes = OUTLOOK.passes();
        assertTrue(passes.size() > 100);
        for (int i = 0; i < passes.size(); i += 37) {
            SitePass found = passes.get(i);
            PassSheet sheet = PassSheet.of(OUTLOOK, found).orElseThrow();
            assertEquals(found.pass().peakElevationDeg(), sheet.tca().look().elevationDeg(), 0.05);
            assertEquals(found.pass().aosAzimuthDeg(), sheet.aos().look().azimuthDeg() - 360
                    * Math.floor(sheet.aos().look().azimuthDeg() / 360), 0.1);
            assertNotEquals(Light.HIDDEN, sheet.aos().light(), found.toString());
            assertTrue(sheet.grain().step().toMillis() / 1000.0 >= Math.min(1, sheet.error().timeErrorS()));
        }
    }

    @Test
    void wordsHoldACellForEachMoment() {
        SheetWords words = new SheetWords(sheet(worked()));
        assertTrue(words.moments().stream().allMatch(row -> row.cells().size() == 3));
        // Iceland keeps UTC all year: one row says both.
        assertEquals(List.of("UTC, local", "Azimuth", "Elevation", "Range"),
                words.moments().stream().map(MomentRow::heading).limit(4).toList());
        assertTrue(words.glance().matches("AOS .*Z .*, peak \\d+°, LOS .*Z .*"), words.glance());
        assertTrue(words.facts().stream().map(Fact::text).noneMatch(text -> text.isBlank() || text.contains("NaN")));
    }

    @Test
    void whoWorksThePassIsNamed() {
        SitePass found = worked();
        assertEquals(1, sheet(found).workers().stream().map(worker -> worker.turn().getBird()).distinct().count());
        assertTrue(fact(found, "Worked by").startsWith("team "));
    }

    @Test
    void aKeyFindsItsPassAfterElementsHaveMovedIt() {
        SitePass found = worked();
        PassKey moved = new PassKey(found.site().getId(), found.bird().getId(), found.pass().aos().minusSeconds(90));
        assertEquals(found, moved.in(OUTLOOK).orElseThrow());
        assertTrue(new PassKey("nowhere", found.bird().getId(), found.pass().tca()).in(OUTLOOK).isEmpty());
    }

    private static SitePass worked() {
        return OUTLOOK.passes().stream().filter(found -> Worker.works(OUTLOOK.event(), found)).findFirst()
                .orElseThrow();
    }

    private static PassSheet sheet(SitePass found) {
        return PassSheet.of(OUTLOOK, found).orElseThrow();
    }

    private static String fact(SitePass found, String heading) {
        return new SheetWords(sheet(found)).facts().stream().filter(fact -> fact.heading().equals(heading)).findFirst()
                .orElseThrow().text();
    }
}
