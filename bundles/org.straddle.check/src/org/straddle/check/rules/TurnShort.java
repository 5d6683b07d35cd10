package org.straddle.check.rules;

import java.time.Duration;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** The policy names the least length of a turn. */
final class TurnShort extends NamedRule {

    TurnShort() {
        super("turn-short", Severity.ADVICE, "Turns are long enough to be worth it");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Duration least = outlook.policies().minimumTurn();
        for (Work work : Itinerary.of(outlook.event()).turns()) {
            if (work.window().duration().compareTo(least) < 0) {
                findings.accept(Finding.of(this, Words.sentence(words.turn(work)) + ", takes "
                        + Words.length(work.window().duration()) + "; this event plans turns of " + Words.length(least)
                        + " or more.", work.turn())
                        .at(work.window().start()));
            }
        }
    }
}
