package org.straddle.daysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.daysheet.Rove;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.drawing.Face;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

class DaySheetLayoutTest {

    /** Letters seven pixels wide and fifteen high, whatever they are. */
    static final TextMeasure SEVEN_BY_FIFTEEN = new TextMeasure() {
        @Override
        public int width(String text, Face face) {
            return 7 * text.length();
        }

        @Override
        public int height(Face face) {
            return 15;
        }
    };

    private static final DaySheet CROWDED = crowded();

    private static DaySheet crowded() {
        Rove rove = new Rove("Asia/Kolkata").team(1, "06-20", "+1 06-20").team(2, "06-20", "+1 06-20");
        List<Turn> turns = new ArrayList<>();
        for (int team = 1; team <= 2; team++) {
            for (String day : List.of("", "+1 ")) {
                Stop early = rove.stop(team, "Redshank Mark of a long name", 64.2, -21, day + "08-10:30");
                turns.add(rove.turn(early, "Tern-1 (demo)", day + "08:20-08:32"));
                turns.add(rove.turn(early, "Fulmar-2 (demo)", day + "08:30-08:44"));
                turns.add(rove.turn(early, "Skua-3 (demo)", day + "08:46-08:57"));
                turns.add(rove.turn(early, "Tern-1 (demo)", day + "10:40-10:52"));
                rove.stop(team, "Heath Cairn", 64.4, -20, day + "10-12");
                turns.add(rove.turn(rove.stop(team, "Cod Quay", 64.9, -20, day + "12:15-16"), "Skua-3 (demo)",
                        day + "15:50-15:59"));
            }
        }
        return rove.sheet(turns.stream().map(turn -> Rove.finding(Severity.WARNING, turn))
                .toArray(Finding[]::new));
    }

    private static DaySheetLayout layout(DaySheet sheet, Window shown, int width, int height) {
        TimeScale scale = TimeScale.fit(shown, width - DaySheetLayout.gutter(width)).within(sheet.range(),
                width - DaySheetLayout.gutter(width));
        return DaySheetLayout.of(sheet, new Viewport(width, height, scale, 0, LegendSize.FULL), SEVEN_BY_FIFTEEN);
    }

    private static Stream<Label> labels(LaneBox lane) {
        return Stream.of(
                lane.spans().stream().flatMap(span -> Stream.of(span.start(), span.end()))
                        .flatMap(Optional::stream).flatMap(base -> base.name().stream()),
                lane.drives().stream().flatMap(drive -> drive.label().stream()),
                lane.stops().stream().flatMap(stop -> stop.title().stream()),
                lane.stops().stream().flatMap(stop -> stop.turns().stream()).flatMap(turn -> turn.label().stream()))
                .flatMap(all -> all);
    }

    /** From half an hour to both days on canvases from small to large. */
    @ParameterizedTest
    @CsvSource({"300,30", "300,240", "300,2880", "800,45", "800,300", "800,720", "800,2880", "1600,60", "1600,1440",
        "1600,2880", "3000,30", "3000,500", "3000,2880"})
    void textNeverOverlapsAndStaysInSight(int width, int minutes) {
        for (int start = 0; start < 2880; start += Math.max(15, minutes / 5)) {
            Window shown = Window.of(CROWDED.range().start().plus(Duration.ofMinutes(start)),
                    Duration.ofMinutes(minutes));
            DaySheetLayout layout = layout(CROWDED, shown, width, 700);
            List<Label> labels = layout.lanes().stream().flatMap(DaySheetLayoutTest::labels).toList();
            for (Label label : labels) {
                assertTrue(label.box().x() >= layout.body().x() && label.box().right() <= layout.body().right(),
                        label + " in " + layout.body());
                assertTrue(labels.stream().noneMatch(other -> other != label && other.box().overlaps(label.box())),
                        () -> label + " overlaps one of " + labels);
            }
            List<Box> marks = layout.lanes().stream().flatMap(lane -> lane.stops().stream())
                    .flatMap(stop -> Stream.concat(stop.mark().stream(), stop.turns().stream()
                            .flatMap(turn -> turn.mark().stream()))).map(MarkBox::shape).toList();
            assertTrue(marks.stream().noneMatch(mark -> labels.stream().anyMatch(l -> l.box().overlaps(mark))));
        }
    }

    @ParameterizedTest
    @CsvSource({"300,2880", "800,300", "1600,60", "3000,2880"})
    void stopWordsStayInTheirBar(int width, int minutes) {
        DaySheetLayout layout = layout(CROWDED, Window.of(CROWDED.busy().start(), Duration.ofMinutes(minutes)), width,
                700);
        layout.lanes().stream().flatMap(lane -> lane.stops().stream()).forEach(stop -> stop.title().ifPresent(
                title -> assertEquals(title.box(), title.box().common(stop.box()), title + " in " + stop.box())));
    }

    @Test
    void barsStandAtTheirTimes() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "A", 64, -21, "10-12");
        // 1210 pixels less a gutter of 210: a pixel is a minute from 08:00.
        DaySheetLayout layout = DaySheetLayout.of(rove.sheet(),
                new Viewport(1210, 400, new TimeScale(Rove.at("08"), 60), 0, LegendSize.FULL), SEVEN_BY_FIFTEEN);
        Box bar = layout.lanes().get(0).stops().get(0).box();
        assertEquals(210 + 120, bar.x());
        assertEquals(120, bar.width());
    }

    @Test
    void theTitleFollowsIntoSightWhenTheBarIsScrolledOut() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.stop(1, "Redshank Mark", 64, -21, "10-16");
        DaySheetLayout layout = DaySheetLayout.of(rove.sheet(),
                new Viewport(1210, 400, new TimeScale(Rove.at("12"), 20), 0, LegendSize.FULL), SEVEN_BY_FIFTEEN);
        StopBox stop = layout.lanes().get(0).stops().get(0);
        assertTrue(stop.box().x() < layout.body().x());
        assertTrue(stop.title().orElseThrow().box().x() >= layout.body().x());
    }

    @Test
    void findingsOfATurnTooNarrowForAMarkCountAtTheStop() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        Stop stop = rove.stop(1, "A", 64, -21, "10-11");
        Turn turn = rove.turn(stop, "Tern-1 (demo)", "10:50-11");
        DaySheet sheet = rove.sheet(Rove.finding(Severity.WARNING, turn));
        StopBox far = layout(sheet, sheet.busy(), 1210, 400).lanes().get(0).stops().get(0);
        assertEquals(Optional.empty(), far.turns().get(0).mark());
        assertEquals(1, far.mark().orElseThrow().marking().count());
        turn.setStart(Rove.at("10:20"));
        turn.setEnd(Rove.at("10:30"));
        sheet = rove.sheet(Rove.finding(Severity.WARNING, turn));
        StopBox near = layout(sheet, Window.of(Rove.at("10"), Duration.ofHours(1)), 1210, 400).lanes().get(0).stops()
                .get(0);
        assertTrue(near.turns().get(0).mark().isPresent());
        assertEquals(Optional.empty(), near.mark());
    }

    @Test
    void hoursStandOnBothClocks() {
        Rove rove = new Rove("Asia/Kolkata").team(1, "08-20");
        Axis axis = DaySheetLayout.of(rove.sheet(),
                new Viewport(1210, 400, new TimeScale(Rove.at("08"), 60), 0, LegendSize.FULL), SEVEN_BY_FIFTEEN).axis();
        Label nine = axis.utc().stream().filter(label -> label.text().equals("09:00")).findFirst().orElseThrow();
        assertEquals(210 + 60, nine.box().middleX());
        // India keeps UTC+5:30 (IANA tz database): 15:00 there is 09:30 UTC.
        Label fifteen = axis.local().stream().filter(label -> label.text().equals("15:00")).findFirst().orElseThrow();
        assertEquals(210 + 90, fifteen.box().middleX());
    }

    @Test
    void aPointLeadsToTheTopmostThing() {
        Rove rove = new Rove("UTC").team(1, "08-20");
        rove.turn(rove.stop(1, "A", 64, -21, "10-12"), "Tern-1 (demo)", "10:30-11");
        DaySheetLayout layout = layout(rove.sheet(), rove.sheet().busy(), 1210, 400);
        StopBox stop = layout.lanes().get(0).stops().get(0);
        Box turn = stop.turns().get(0).box();
        assertInstanceOf(TurnBox.class, layout.at(turn.middleX(), turn.middleY()).orElseThrow());
        assertInstanceOf(StopBox.class, layout.at(stop.box().x() + 2, stop.box().y() + 2).orElseThrow());
        assertInstanceOf(LaneBox.class, layout.at(5, stop.box().y()).orElseThrow());
        assertInstanceOf(DayTab.class, layout.at(600, 3).orElseThrow());
        assertFalse(layout.at(600, 399).isPresent());
    }

    @Test
    void rowsThatAreEmptyOnTheDaysInSightTakeNoRoom() {
        Rove rove = new Rove("UTC").team(1, "08-20", "+1 08-20");
        rove.stop(1, "A", 64, -21, "10-12");
        rove.stop(1, "B", 64, -21, "+1 10-12");
        rove.stop(1, "C", 64, -21, "+1 11-13");
        DaySheet sheet = rove.sheet();
        assertTrue(layout(sheet, sheet.days().get(0).busy(), 1000, 400).lanesHeight()
                < layout(sheet, sheet.days().get(1).busy(), 1000, 400).lanesHeight());
    }
}
