package org.straddle.daysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.daysheet.Rove;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.sky.Window;

class SightTest {

    private final Rove rove = new Rove("UTC").team(1, "08-20", "+1 08-20");
    private final DaySheet sheet = rove.sheet();
    private final Sight sight = new Sight();

    @BeforeEach
    void show() {
        sight.resize(1000);
        sight.show(sheet);
    }

    @Test
    void startsWithAllDaysAndKeepsThemWhenTheWindowGrows() {
        assertTrue(sight.shown().contains(sheet.busy()));
        sight.resize(2000);
        assertTrue(sight.shown().contains(sheet.busy()));
        assertTrue(sight.shown().duration().compareTo(Duration.ofHours(40)) < 0);
    }

    @Test
    void aNewerSheetOfTheEventDoesNotMoveTheSight() {
        sight.fit(sheet.days().get(1));
        sight.zoom(true);
        Window before = sight.shown();
        sight.show(rove.sheet());
        assertEquals(before, sight.shown());
    }

    @Test
    void anotherEventIsShownWhole() {
        sight.fit(sheet.days().get(1));
        DaySheet other = new Rove("UTC").team(1, "10-12").sheet();
        sight.show(other);
        assertTrue(sight.shown().contains(other.busy()));
        assertTrue(sight.shown().duration().compareTo(Duration.ofHours(3)) < 0);
    }

    @Test
    void theHourIsAnHour() {
        sight.hour(Rove.at("12"));
        assertEquals(Rove.at("12"), sight.middle());
        assertTrue(sight.shown().duration().toMinutes() >= 60 && sight.shown().duration().toMinutes() <= 66);
    }

    @Test
    void bringingMovesOnlyWhenNeeded() {
        sight.fit(sheet.days().get(0));
        Window before = sight.shown();
        sight.bring(new Window(Rove.at("10"), Rove.at("11")));
        assertEquals(before, sight.shown());
        Window tomorrow = new Window(Rove.at("+1 10"), Rove.at("+1 11"));
        sight.bring(tomorrow);
        assertTrue(sight.shown().contains(tomorrow));
        assertEquals(before.duration(), sight.shown().duration());
    }

    @Test
    void homeAndEndAreTheMidnightsAround() {
        sight.fit(sheet.days().get(0));
        sight.toEnd();
        assertEquals(sheet.range().end(), sight.shown().end());
        sight.toStart();
        assertEquals(sheet.range().start(), sight.shown().start());
    }
}
