package org.straddle.check.rules.bird;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** The bird's calendar has the transponder off during part of the turn. */
public final class BirdOff extends ScopedRule<Stay> {

    public BirdOff() {
        super(Scope.STAY, "bird-off", Severity.BLOCKER, "Planned birds are switched on");
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Work work : stay.turns()) {
            List<Window> on = in.outlook().switchedOn(work.bird(), work.window());
            if (!on.equals(List.of(work.window()))) {
                findings.accept(PartOfTurn.finding(this, work, on, "switched on by its calendar", in));
            }
        }
    }
}
