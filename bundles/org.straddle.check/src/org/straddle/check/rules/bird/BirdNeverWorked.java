package org.straddle.check.rules.bird;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.model.BirdReport;
import org.straddle.model.ReportKind;
import org.straddle.outlook.itinerary.Work;

/** Having heard a bird is not yet having made a contact through it. */
public final class BirdNeverWorked extends ScopedRule<Bird> {

    public BirdNeverWorked() {
        super(Scope.BIRD, CheckRule.BIRD_NEVER_WORKED.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        Set<ReportKind> kinds = bird.getReports().stream().map(BirdReport::getKind).collect(Collectors.toSet());
        if (!turns.isEmpty() && kinds.contains(ReportKind.HEARD) && !kinds.contains(ReportKind.TWO_WAY_CONTACT)) {
            findings.accept(BirdFinding.of(this, bird, turns, Statement.of("birdNeverWorked.heardButNobody",
                    "bird", bird, "planned", BirdFinding.planned(turns))));
        }
    }
}
