package org.straddle.ui.sky.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.Arc;
import org.straddle.ui.sky.pass.PassSheet;

class HorizonFrameTest {

    private static final HorizonFrame FRAME = new HorizonFrame(100, 10, 720, 300, -170, 360, 0, 60);

    @Test
    void aDirectionLiesInTheFrameOnceHoweverItIsWritten() {
        assertEquals(10, FRAME.inside(10));
        assertEquals(-10, FRAME.inside(350), 1e-9);
        assertEquals(-170, FRAME.inside(190), 1e-9);
        assertEquals(FRAME.x(FRAME.inside(-10)), FRAME.x(FRAME.inside(350)));
        assertEquals(FRAME.azimuthDeg(FRAME.x(45)), 45, 0.5);
    }

    @Test
    void elevationRunsUpwards() {
        assertEquals(310, FRAME.y(0));
        assertEquals(10, FRAME.y(60));
        assertEquals(160, FRAME.y(30));
    }

    @Test
    void everyArcLiesInTheMiddleAndWithin() {
        Outlook outlook = Outlook.of(DemoEvent.create(), null);
        for (int i = 0; i < outlook.passes().size(); i += 53) {
            SitePass found = outlook.passes().get(i);
            PassSheet sheet = PassSheet.of(outlook, found).orElseThrow();
            HorizonFrame frame = HorizonFrame.of(sheet, 0, 0, 1000, 400);
            Arc arc = sheet.arc();
            assertEquals(frame.exactX(arc.leastAzimuthDeg()), 1000 - frame.exactX(arc.mostAzimuthDeg()), 1e-6);
            assertTrue(frame.exactX(arc.leastAzimuthDeg()) >= 0, found.toString());
            assertTrue(frame.topDeg() >= Math.min(90, found.pass().peakElevationDeg() + 3), found.toString());
        }
    }
}
