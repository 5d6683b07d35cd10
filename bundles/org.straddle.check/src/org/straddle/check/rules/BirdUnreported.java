package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.BirdState;
import org.straddle.outlook.Outlook;

/** Nobody has said anything about the bird, and its state is not known. */
final class BirdUnreported extends NamedRule {

    BirdUnreported() {
        super("bird-unreported", Severity.ADVICE, "There is a report of every planned bird");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> {
            if (bird.getState() == BirdState.UNKNOWN && bird.getReports().isEmpty()) {
                findings.accept(BirdFinding.of(this, bird, turns, "Nobody has reported whether " + Words.name(bird)
                        + " works; " + BirdFinding.planned(turns, words) + "."));
            }
        });
    }
}
