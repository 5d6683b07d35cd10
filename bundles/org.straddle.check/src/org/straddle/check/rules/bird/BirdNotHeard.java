package org.straddle.check.rules.bird;

import java.util.Comparator;
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
import org.straddle.model.BirdReport;
import org.straddle.model.ReportKind;
import org.straddle.outlook.itinerary.Work;

/** The newest report of the bird says that nothing was heard. */
public final class BirdNotHeard extends ScopedRule<Bird> {

    public BirdNotHeard() {
        super(Scope.BIRD, CheckRule.BIRD_NOT_HEARD.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.itinerary().on(bird);
        if (turns.isEmpty()) {
            return;
        }
        bird.getReports().stream().filter(report -> report.getAt() != null).max(Comparator.comparing(BirdReport::getAt))
                .filter(newest -> newest.getKind() == ReportKind.NOT_HEARD)
                .ifPresent(newest -> findings.accept(BirdFinding.of(this, bird, turns, Statement.of("birdNotHeard.notHeardLast", "bird", bird, "at", newest.getAt(), "planned", BirdFinding.planned(turns)))));
    }
}
