package org.straddle.check.rules.bird;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.model.BirdState;
import org.straddle.outlook.itinerary.Work;

/** A bird that works now and then may not answer. */
public final class BirdIntermittent extends ScopedRule<Bird> {

    public BirdIntermittent() {
        super(Scope.BIRD, CheckRule.BIRD_INTERMITTENT.id(), Severity.ADVICE);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (bird.getState() == BirdState.INTERMITTENT && !turns.isEmpty()) {
            findings.accept(BirdFinding.of(this, bird, turns, Statement.of("birdIntermittent.worksOnlyNow",
                    "bird", bird, "planned", BirdFinding.planned(turns))));
        }
    }
}
