package org.straddle.ui.daysheet;

import java.util.Objects;

import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;

/** A number that tells whether the plan, as the sheet draws it, is another one than before. */
final class PlanPrint {

    private PlanPrint() {
    }

    static int of(Event event) {
        int print = 1;
        if (event.getPlan() != null) {
            for (Stop stop : event.getPlan().getStops()) {
                print = 31 * print + Objects.hash(stop.getId(), stop.getTeam() == null ? "" : stop.getTeam().getId(),
                        stop.getSite() == null ? "" : stop.getSite().getId(), stop.getArrival(), stop.getDeparture(),
                        stop.isPinned());
                for (Turn turn : stop.getTurns()) {
                    print = 31 * print + Objects.hash(turn.getId(), turn.getBird() == null ? "" : turn.getBird().getId(),
                            turn.getStart(), turn.getEnd(), turn.isPinned());
                }
            }
        }
        return print;
    }
}
