package org.straddle.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;
import org.straddle.kit.energy.DayEnergy;
import org.straddle.kit.energy.DayEnergy.Left;
import org.straddle.kit.energy.Spell;

/** A picture of 120 by 100 pixels for two hours: a pixel is a minute, and with 100 Wh in the morning also one Wh. */
class EnergyCurveTest {

    private static final Rectangle PLOT = new Rectangle(10, 20, 120, 100);

    private static Left left(String turn, int minutes, String start, double wh) {
        return new Left(new Spell(turn, Duration.ofMinutes(minutes), Instant.parse("2031-06-22T" + start + ":00Z")), wh);
    }

    private static EnergyCurve curve(double morningWh, double drawnWh, Left... course) {
        return EnergyCurve.of(new DayEnergy("2031-06-22", morningWh, drawnWh, Map.of(), List.of(course)), PLOT).orElseThrow();
    }

    @Test
    void theLineFallsWhileATurnLastsAndStaysBetween() {
        EnergyCurve curve = curve(100, 80, left("", 30, "10:00", 90), left("Tern", 12, "10:24", 70), left("Tern", 12, "11:48", 20));
        assertEquals(List.of(new Point(10, 20), new Point(10, 20), new Point(10, 30), new Point(34, 30), new Point(46, 50),
                new Point(118, 50), new Point(130, 100), new Point(130, 100)), curve.line());
        assertEquals(List.of(new Rectangle(34, 114, 12, 6), new Rectangle(118, 114, 12, 6)), curve.turns());
        assertEquals(120, curve.emptyY(), "the lower edge");
        assertEquals(Instant.parse("2031-06-22T12:00:00Z"), curve.until());
    }

    /** 50 Wh are missing in the end: 150 Wh are 100 pixels, so empty lies 100 Wh = 66.7 pixels below the upper edge. */
    @Test
    void whatIsMissingLiesBelowEmpty() {
        EnergyCurve curve = curve(100, 150, left("Tern", 60, "10:00", 25), left("Tern", 60, "11:00", -50));
        assertEquals(20 + 67, curve.emptyY());
        assertEquals(List.of(new Point(10, 20), new Point(10, 20), new Point(70, 70), new Point(70, 70), new Point(130, 120),
                new Point(130, 120)), curve.line());
    }

    @Test
    void aShortTurnIsStillSeen() {
        EnergyCurve curve = curve(100, 1, left("Tern", 0, "10:00", 100), left("Tern", 1, "19:59", 99));
        assertEquals(2, curve.turns().get(0).width);
    }

    @Test
    void withoutAClockThereIsNoPicture() {
        assertEquals(Optional.empty(), EnergyCurve.of(new DayEnergy("2031-06-22", 100, 10, Map.of(),
                List.of(new Left(new Spell("Tern", Duration.ofMinutes(10)), 90))), PLOT));
    }
}
