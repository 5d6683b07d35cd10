package org.straddle.check.rules;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** The bird's calendar has the transponder off during part of the turn. */
final class BirdOff extends NamedRule {

    BirdOff() {
        super("bird-off", Severity.BLOCKER, "Planned birds are switched on");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        for (Work work : Itinerary.of(outlook.event()).turns()) {
            List<Window> on = outlook.switchedOn(work.bird(), work.window());
            if (!on.equals(List.of(work.window()))) {
                findings.accept(PartOfTurn.finding(this, work, on, "switched on by its calendar", words, outlook));
            }
        }
    }
}
