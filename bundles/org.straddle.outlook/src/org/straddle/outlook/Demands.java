package org.straddle.outlook;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.grid.Square;
import org.straddle.model.Demand;
import org.straddle.model.Event;

/**
 * What share of the chasers still need each square, as an event lists it; known without computing any pass. While the
 * event lists no demand at all, every square counts as 1; once it lists some, a square that is not listed counts as 0.
 */
public final class Demands {

    private final Map<Square, Double> shares = new HashMap<>();

    private Demands(Event event, Consumer<String> unknown) {
        for (Demand demand : event.getDemands()) {
            Optional<Square> square = Square.named(demand.getSquare());
            double share = demand.getSharePercent() / 100;
            if (square.isPresent()) {
                shares.put(square.get(), Double.isNaN(share) ? 0 : Math.max(0, Math.min(1, share)));
            } else {
                unknown.accept(demand.getSquare());
            }
        }
    }

    /** Names that are no squares are left out. What is read here is not changed by later edits of the event. */
    public static Demands of(Event event) {
        return of(event, name -> { });
    }

    /** @param unknown told of each name that is no square */
    static Demands of(Event event, Consumer<String> unknown) {
        return new Demands(event, unknown);
    }

    /** 0 to 1. */
    public double of(Square square) {
        return shares.isEmpty() ? 1 : shares.getOrDefault(square, 0.0);
    }
}
