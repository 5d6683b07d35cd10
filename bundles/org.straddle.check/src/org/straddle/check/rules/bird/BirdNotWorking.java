package org.straddle.check.rules.bird;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.mend.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Bird;
import org.straddle.outlook.itinerary.BirdHours;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Work;

/** Nobody can be worked through a bird that is reported not working. */
public final class BirdNotWorking extends ScopedRule<Bird> {

    public BirdNotWorking() {
        super(Scope.BIRD, PlanRule.BIRD_NOT_WORKING.id(), Severity.BLOCKER, "Planned birds are working");
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (BirdHours.isNotWorking(bird) && !turns.isEmpty()) {
            findings.accept(BirdFinding.of(this, bird, turns, Words.sentence(Words.name(bird))
                    + " is not working, but " + BirdFinding.planned(turns, in.words()) + ".")
                    .mendedBy(RemoveTurns.all("Remove all turns on " + Words.name(bird), turns)));
        }
    }
}
