package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.BirdState;
import org.straddle.outlook.Outlook;

/** A bird that works now and then may not answer. */
final class BirdIntermittent extends NamedRule {

    BirdIntermittent() {
        super("bird-intermittent", Severity.ADVICE, "Planned birds are there every time");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> {
            if (bird.getState() == BirdState.INTERMITTENT) {
                findings.accept(BirdFinding.of(this, bird, turns, Words.sentence(Words.name(bird))
                        + " works only now and then; " + BirdFinding.planned(turns, words) + "."));
            }
        });
    }
}
