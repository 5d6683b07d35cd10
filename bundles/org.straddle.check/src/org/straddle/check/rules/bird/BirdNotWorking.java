package org.straddle.check.rules.bird;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.outlook.itinerary.BirdHours;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Work;

/** Nobody can be worked through a bird that is reported not working. */
public final class BirdNotWorking extends ScopedRule<Bird> {

    public BirdNotWorking() {
        super(Scope.BIRD, PlanRule.BIRD_NOT_WORKING.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (BirdHours.isNotWorking(bird) && !turns.isEmpty()) {
            findings.accept(BirdFinding.of(this, bird, turns, Statement.of("birdNotWorking.notWorkingBut",
                    "bird", bird, "planned", BirdFinding.planned(turns)))
                    .fixedBy(RemoveTurns.all(Statement.of("birdNotWorking.removeAllTurns", "bird", bird), turns)));
        }
    }
}
