package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.straddle.grid.Square;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.StraddleFactory;

class DemandsTest {

    private final Event event = Fresh.event("Demo");

    private void demand(String square, double percent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(percent);
        event.getDemands().add(demand);
    }

    private double of(String square) {
        return Demands.of(event).of(Square.parse(square));
    }

    @Test
    void everySquareCountsUntilSomeAreListed() {
        assertEquals(1, of("HP94"));
        demand("HP94", 40);
        demand("IP04", 140);
        demand("nowhere", 50);
        demand("IP03", Double.NaN);
        assertEquals(0.4, of("HP94"));
        assertEquals(1, of("IP04"));
        assertEquals(0, of("IP03"));
        assertEquals(0, of("HP93"));
        Demands before = Demands.of(event);
        event.getDemands().clear();
        assertEquals(0.4, before.of(Square.parse("HP94")), "what was read stays");
    }
}
