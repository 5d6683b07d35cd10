package org.straddle.ui.sky.pass;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.Fresh;
import org.straddle.model.Link;

class DialTest {

    /** By hand: 435 MHz × 6 km/s / 299 792.458 km/s = 8.706 kHz (speed of light exact, SI Brochure, 9th ed.). */
    @Test
    void aBirdThatComesNearerIsHeardHigherAndSentToLower() {
        assertEquals(8.706, new Dial(Dial.Direction.DOWNLINK, 435, "").addKhz(-6), 5e-4);
        assertEquals(-8.706, new Dial(Dial.Direction.UPLINK, 435, "").addKhz(-6), 5e-4);
        assertEquals(0, new Dial(Dial.Direction.UPLINK, 435, "").addKhz(0));
    }

    @Test
    void whatIsNotEnteredHasNoDial() {
        Bird bird = Fresh.bird();
        assertEquals(List.of(), Dial.of(bird, 0));
        bird.setDownlink(link(436.780, 436.780, false));
        assertEquals(List.of("DOWNLINK 436.780 channel"), told(bird, 0));
    }

    @Test
    void aPassbandIsTakenInTheMiddleUnlessAFrequencyIsAgreed() {
        Bird bird = Fresh.bird();
        bird.setUplink(link(435.110, 435.150, true));
        bird.setDownlink(link(145.850, 145.890, false));
        assertEquals(List.of("DOWNLINK 145.870 middle of the passband", "UPLINK 435.130 middle of the passband"),
                told(bird, 0));
        assertEquals(List.of("DOWNLINK 145.855 agreed frequency",
                "UPLINK 435.145 frequency for the agreed downlink"), told(bird, 145.855));
        bird.getUplink().setInverted(false);
        assertEquals("UPLINK 435.115 frequency for the agreed downlink", told(bird, 145.855).get(1));
    }

    @Test
    void noShiftHasNoSign() {
        assertEquals("0.0", SheetWords.khz(-0.04));
        assertEquals("+0.1", SheetWords.khz(0.06));
        assertEquals("−9.6", SheetWords.khz(-9.61));
    }

    private static List<String> told(Bird bird, double agreedMhz) {
        return Dial.of(bird, agreedMhz).stream().map(dial -> String.format(Locale.ROOT, "%s %.3f %s",
                dial.direction(), dial.nominalMhz(), dial.which())).toList();
    }

    private static Link link(double lowMhz, double highMhz, boolean inverted) {
        Link link = Fresh.link(lowMhz, highMhz);
        link.setInverted(inverted);
        return link;
    }
}
