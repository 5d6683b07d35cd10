package org.straddle.check.rules;

import java.util.Comparator;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.BirdReport;
import org.straddle.model.ReportKind;
import org.straddle.outlook.Outlook;

/** The newest report of the bird says that nothing was heard. */
final class BirdNotHeard extends NamedRule {

    BirdNotHeard() {
        super("bird-not-heard", Severity.WARNING, "A planned bird was heard at the last attempt");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> bird.getReports().stream()
                .filter(report -> report.getAt() != null).max(Comparator.comparing(BirdReport::getAt))
                .filter(newest -> newest.getKind() == ReportKind.NOT_HEARD)
                .ifPresent(newest -> findings.accept(BirdFinding.of(this, bird, turns, Words.sentence(Words.name(bird))
                        + " was not heard at the last attempt, " + words.at(newest.getAt()) + "; "
                        + BirdFinding.planned(turns, words) + "."))));
    }
}
