package org.straddle.check.rules.bird;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.outlook.itinerary.BirdHours;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/** The bird's calendar has the transponder off during part of the turn. */
public final class BirdOff extends ScopedRule<Stay> {

    public BirdOff() {
        super(Scope.STAY, PlanRule.BIRD_OFF.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Work work : stay.turns()) {
            if (BirdHours.isOff(in.outlook(), work)) {
                findings.accept(PartOfTurn.finding(this, work, in.outlook().switchedOn(work.bird(), work.window()),
                        Statement.of("birdOff.switchedItsCalendar"), in));
            }
        }
    }
}
