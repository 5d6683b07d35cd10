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

/** A bird that works by sunlight only is in the shadow of the Earth during part of the turn. */
public final class BirdUnlit extends ScopedRule<Stay> {

    public BirdUnlit() {
        super(Scope.STAY, PlanRule.BIRD_UNLIT.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Stay stay, Inspection in, Consumer<Finding> findings) {
        for (Work work : stay.turns()) {
            if (BirdHours.isUnlit(in.outlook(), work)) {
                findings.accept(PartOfTurn.finding(this, work, in.outlook().lit(work.bird(), work.window()),
                        Statement.of("birdUnlit.sunlightWhichNeeds"), in));
            }
        }
    }
}
