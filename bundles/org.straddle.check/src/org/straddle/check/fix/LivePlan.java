package org.straddle.check.fix;

import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.Itinerary;

/** Finds the stops and turns of the event being edited that a finding, made from a copy, speaks of. */
public record LivePlan(Event event) {

    Optional<Stop> stop(String id) {
        return Itinerary.stops(event).filter(stop -> id.equals(stop.getId())).findFirst();
    }

    Optional<Turn> turn(String id) {
        return Itinerary.stops(event).flatMap(stop -> stop.getTurns().stream()).filter(turn -> id.equals(turn.getId()))
                .findFirst();
    }
}
