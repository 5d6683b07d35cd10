package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.BirdState;
import org.straddle.outlook.Outlook;

/** Nobody can be worked through a bird that is reported not working. */
final class BirdNotWorking extends NamedRule {

    BirdNotWorking() {
        super("bird-not-working", Severity.BLOCKER, "Planned birds are working");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> {
            if (bird.getState() == BirdState.NOT_WORKING) {
                findings.accept(BirdFinding.of(this, bird, turns, Words.sentence(Words.name(bird))
                        + " is not working, but " + BirdFinding.planned(turns, words) + ".")
                        .mendedBy(RemoveTurns.all("Remove all turns on " + Words.name(bird), turns)));
            }
        });
    }
}
