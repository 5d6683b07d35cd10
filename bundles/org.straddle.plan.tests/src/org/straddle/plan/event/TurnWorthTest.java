package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

class TurnWorthTest {

    private final Event event = Fresh.event("Rove");
    private final Bird bird = Fresh.bird();

    private Turn turn(String... squares) {
        Site site = Fresh.site();
        site.getSquares().addAll(List.of(squares));
        event.getSites().add(site);
        Stop stop = Fresh.stop();
        stop.setSite(site);
        event.getPlan().getStops().add(stop);
        Turn turn = Fresh.turn();
        turn.setBird(bird);
        stop.getTurns().add(turn);
        return turn;
    }

    private void demand(String square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(percent);
        event.getDemands().add(demand);
    }

    @Test
    void itAddsWhatThePlanWouldLoseWithoutIt() {
        event.getBirds().add(bird);
        event.getPolicies().getRepeatWorths().addAll(List.of(1.0, 0.5, 0.2));
        demand("HP94", 80);
        demand("HP95", 40);
        Turn onLine = turn("HP94", "HP95");
        turn("HP94");
        turn("HP94");
        TurnWorth worth = TurnWorth.of(Outlook.of(event, null), onLine);
        assertEquals(List.of("HP94", "HP95"), worth.parts().stream().map(part -> part.square().name()).toList());
        assertEquals(List.of(3, 1), worth.parts().stream().map(TurnWorth.Part::worked).toList());
        // Without it HP94 would have two passes instead of three: 0.8 times 0.2 less. HP95 would have none.
        assertEquals(0.8 * 0.2, worth.parts().get(0).adds(), 1e-12);
        assertEquals(0.8 * 0.2 + 0.4, worth.adds(), 1e-12);
    }

    @Test
    void aPassBeyondTheTiersAddsNothing() {
        event.getBirds().add(bird);
        event.getPolicies().getRepeatWorths().add(1.0);
        turn("HP94");
        assertEquals(0, TurnWorth.of(Outlook.of(event, null), turn("HP94")).adds(), 0);
    }
}
