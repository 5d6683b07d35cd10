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
import org.straddle.outlook.itinerary.Work;

/** Stations are planned and announced on a bird whose frequency nobody entered. */
public final class DownlinkMissing extends ScopedRule<Bird> {

    public DownlinkMissing() {
        super(Scope.BIRD, CheckRule.DOWNLINK_MISSING.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (!turns.isEmpty() && !isKnown(bird)) {
            findings.accept(BirdFinding.of(this, bird, turns, Statement.of("downlinkMissing.noFrequency",
                    "bird", bird, "planned", BirdFinding.planned(turns))));
        }
    }

    /** Is there a downlink that can be announced? 0 MHz is what an empty field holds. */
    private static boolean isKnown(Bird bird) {
        return bird.getDownlink() != null && bird.getDownlink().getLowMhz() > 0;
    }
}
