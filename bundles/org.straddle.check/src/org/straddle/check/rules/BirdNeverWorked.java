package org.straddle.check.rules;

import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.BirdReport;
import org.straddle.model.ReportKind;
import org.straddle.outlook.Outlook;

/** Having heard a bird is not yet having made a contact through it. */
final class BirdNeverWorked extends NamedRule {

    BirdNeverWorked() {
        super("bird-never-worked", Severity.WARNING, "Somebody has worked through a planned bird");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> {
            Set<ReportKind> kinds = bird.getReports().stream().map(BirdReport::getKind).collect(Collectors.toSet());
            if (kinds.contains(ReportKind.HEARD) && !kinds.contains(ReportKind.TWO_WAY_CONTACT)) {
                findings.accept(BirdFinding.of(this, bird, turns, Words.sentence(Words.name(bird))
                        + " was heard, but nobody has reported a two-way contact through it; "
                        + BirdFinding.planned(turns, words) + "."));
            }
        });
    }
}
