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

/** Nobody has said anything about the bird, and its state is not known. */
public final class BirdUnreported extends ScopedRule<Bird> {

    public BirdUnreported() {
        super(Scope.BIRD, CheckRule.BIRD_UNREPORTED.id(), Severity.ADVICE);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (bird.getState() == BirdState.UNKNOWN && bird.getReports().isEmpty() && !turns.isEmpty()) {
            findings.accept(BirdFinding.of(this, bird, turns, Statement.of("birdUnreported.nobodyHasReported",
                    "bird", bird, "planned", BirdFinding.planned(turns))));
        }
    }
}
