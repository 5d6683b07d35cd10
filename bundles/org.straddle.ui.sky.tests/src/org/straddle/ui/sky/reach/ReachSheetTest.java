package org.straddle.ui.sky.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Region;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.CommonView;

class ReachSheetTest {

    private static final Outlook OUTLOOK = outlook(region("Near", 75, "IO78", "IP62"),
            region("Antipodes", 25, "RE78"));

    private static Outlook outlook(Region... regions) {
        Event event = DemoEvent.create();
        event.getRegions().clear();
        event.getRegions().addAll(List.of(regions));
        return Outlook.of(event, null);
    }

    private static Region region(String name, double sharePercent, String... squares) {
        Region region = Fresh.region();
        region.setName(name);
        region.setSharePercent(sharePercent);
        region.getSquares().addAll(List.of(squares));
        return region;
    }

    private static SitePass high() {
        return OUTLOOK.passes().stream().filter(found -> found.pass().peakElevationDeg() > 45).findFirst().orElseThrow();
    }

    @Test
    void anEventWithoutRegionsHasNoReach() {
        Outlook outlook = outlook();
        assertTrue(ReachSheet.of(outlook, outlook.passes().get(0)).isEmpty());
    }

    @Test
    void aRegionThatCannotBeUsedDoesNotHideTheOthers() {
        Outlook outlook = outlook(region("Broken", 50, "no square"), region("Near", 50, "IO78"));
        List<String> names = ReachSheet.of(outlook, outlook.passes().get(0)).orElseThrow().rows().stream()
                .map(ReachRow::name).toList();
        assertTrue(names.contains("Near"), names.toString());
    }

    @Test
    void aPlaceHasAnElevationJustWhileItCanBeWorked() {
        int seen = 0;
        for (int i = 0; i < OUTLOOK.passes().size(); i += 60) {
            ReachSheet sheet = ReachSheet.of(OUTLOOK, OUTLOOK.passes().get(i)).orElseThrow();
            for (ReachRow row : sheet.rows().stream().filter(r -> r.kind() == ReachRow.Kind.SQUARE).toList()) {
                assertEquals(sheet.slices().size(), row.cells().size());
                for (int s = 0; s < row.cells().size(); s++) {
                    Window slice = sheet.slices().get(s).window();
                    boolean workable = row.views().stream().map(CommonView::window).anyMatch(slice::overlaps);
                    assertEquals(workable, row.cells().get(s).isPresent());
                    assertTrue(!workable || row.cells().get(s).getAsDouble() >= sheet.leastDeg() - 0.01);
                    seen += workable ? 1 : 0;
                }
            }
            assertTrue(sheet.rows().stream().noneMatch(r -> r.name().equals("RE78")), "the far side of the Earth");
        }
        assertTrue(seen > 10);
    }

    @Test
    void everybodyIsTheShareOfTheRegions() {
        for (int i = 0; i < OUTLOOK.passes().size(); i += 60) {
            List<ReachRow> rows = ReachSheet.of(OUTLOOK, OUTLOOK.passes().get(i)).orElseThrow().rows();
            ReachRow near = rows.stream().filter(r -> r.name().equals("Near")).findFirst().orElseThrow();
            assertEquals(0.75 * near.mean(), rows.get(0).mean(), 1e-9);
            OptionalDouble all = rows.get(0).cells().get(0);
            OptionalDouble part = near.cells().get(0);
            assertEquals(0.75 * part.orElse(0), all.orElse(0), 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"2027-06-18T10:17:01Z, 2027-06-18T10:29:49Z, 13, 2027-06-18T10:18:00Z",
        "2027-06-18T10:17:01Z, 2027-06-18T10:19:20Z, 5, 2027-06-18T10:17:30Z",
        "2027-06-18T10:00:00Z, 2027-06-19T10:00:00Z, 12, 2027-06-18T12:00:00Z"})
    void aPassIsCutAtRoundTimes(Instant start, Instant end, int slices, Instant second) {
        List<Window> cut = Slice.cut(new Window(start, end));
        assertEquals(slices, cut.size());
        assertEquals(second, cut.get(1).start());
        assertEquals(start, cut.get(0).start());
        assertEquals(end, cut.get(cut.size() - 1).end());
    }

    @Test
    void wordsHaveACellForEachColumn() {
        ReachWords words = new ReachWords(ReachSheet.of(OUTLOOK, high()).orElseThrow());
        assertTrue(words.rows().stream().allMatch(row -> row.size() == ReachWords.COLUMNS.size()));
        assertEquals("<1 %", ReachWords.percent(0.001));
        assertEquals("0 %", ReachWords.percent(0));
        assertEquals("", ReachWords.percent(Double.NaN));
    }
}
