package org.straddle.daysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;

import org.junit.jupiter.api.Test;
import org.straddle.daysheet.Rove;
import org.straddle.sky.Window;

class TimeScaleTest {

    private static final Window DAY = Window.parse("2031-06-20T00:00:00Z/PT24H");

    @Test
    void zoomingKeepsTheInstantUnderThePointer() {
        TimeScale scale = TimeScale.fit(DAY, 1000);
        assertEquals(300, scale.zoomed(3, 300).x(scale.at(300)), 1);
    }

    @Test
    void nothingBeyondTheRangeIsShown() {
        TimeScale late = new TimeScale(Rove.at("23"), 60).within(DAY, 600);
        assertEquals(Rove.at("14"), late.left());
        assertEquals(DAY, new TimeScale(Rove.at("03"), 10_000).within(DAY, 600).shown(600));
    }

    @Test
    void instantsFarAwayStayWithinThePixelsOfDrawingSystems() {
        TimeScale scale = new TimeScale(Rove.at("00"), TimeScale.CLOSEST);
        assertEquals(30_000, scale.x(Rove.at("00").plus(Duration.ofDays(60))));
        assertEquals(-30_000, scale.x(Rove.at("00").minus(Duration.ofDays(60))));
    }
}
