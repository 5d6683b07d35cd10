package org.straddle.ui.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;

class PassesTest {

    private final Outlook outlook = Outlook.of(DemoEvent.create(), null);

    @Test
    void aTurnMeansThePassItWorks() {
        Stop stop = outlook.event().getPlan().getStops().stream().filter(one -> !one.getTurns().isEmpty()).findFirst()
                .orElseThrow();
        Turn turn = stop.getTurns().get(0);
        SitePass pass = Passes.meant(turn, outlook).orElseThrow();
        assertEquals(stop.getSite(), pass.site());
        assertEquals(turn.getBird(), pass.bird());
        assertTrue(pass.pass().aos().isBefore(turn.getEnd()) && pass.pass().los().isAfter(turn.getStart()));
    }

    @Test
    void thePassIsFoundAgainInAnotherComputation() {
        SitePass pass = outlook.passes().get(17);
        Outlook later = Outlook.of(Snapshot.of(outlook.event()), null);
        SitePass again = Passes.same(later, pass).orElseThrow();
        assertEquals(pass.site().getId(), again.site().getId());
        assertEquals(pass.pass().tca(), again.pass().tca());
    }

    @Test
    void aSiteMeansNoPass() {
        assertEquals(Optional.empty(), Passes.meant(outlook.event().getSites().get(0), outlook));
    }
}
