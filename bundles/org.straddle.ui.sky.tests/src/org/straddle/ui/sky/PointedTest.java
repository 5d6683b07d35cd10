package org.straddle.ui.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Window;
import org.straddle.ui.sky.pass.PassKey;

class PointedTest {

    private static final Event LIVE = DemoEvent.create();
    private static final Outlook OUTLOOK = Outlook.of(Snapshot.of(LIVE), null);
    private static final SitePass NOW = OUTLOOK.passes().get(40);

    private static Optional<SitePass> at(Object selected) {
        return Pointed.at(selected, OUTLOOK, Optional.of(NOW)).flatMap(key -> key.in(OUTLOOK));
    }

    @Test
    void aTurnLeadsToThePassItWorks() {
        int led = 0;
        for (Stop stop : LIVE.getPlan().getStops()) {
            for (Turn turn : stop.getTurns()) {
                Window worked = new Window(turn.getStart(), turn.getEnd());
                Optional<SitePass> found = at(turn);
                boolean hasPass = OUTLOOK.passes().stream().anyMatch(p -> p.site().getId().equals(stop.getSite().getId())
                        && p.bird().getId().equals(turn.getBird().getId()) && p.pass().window().overlaps(worked));
                if (hasPass) {
                    assertTrue(found.orElseThrow().pass().window().overlaps(worked), turn.toString());
                    led++;
                }
            }
        }
        assertTrue(led > 10);
    }

    @Test
    void aSiteKeepsTheBirdAndABirdKeepsTheSite() {
        Site other = LIVE.getSites().stream().filter(site -> !site.getId().equals(NOW.site().getId())).findFirst()
                .orElseThrow();
        assertEquals(NOW.bird(), at(other).orElseThrow().bird());
        assertEquals(other.getId(), at(other).orElseThrow().site().getId());
        Bird bird = LIVE.getBirds().stream().filter(b -> !b.getId().equals(NOW.bird().getId())).findFirst()
                .orElseThrow();
        assertEquals(NOW.site(), at(bird).orElseThrow().site());
    }

    @Test
    void aPassIsItselfAndOtherThingsPointAtNone() {
        SitePass other = OUTLOOK.passes().get(90);
        assertEquals(PassKey.of(other), Pointed.at(other, OUTLOOK, Optional.of(NOW)).orElseThrow());
        assertTrue(at(LIVE).isEmpty());
        assertTrue(at("a word").isEmpty());
    }
}
