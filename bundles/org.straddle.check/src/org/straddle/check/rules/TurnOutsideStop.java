package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A team works only while it is at the site. */
final class TurnOutsideStop extends NamedRule {

    TurnOutsideStop() {
        super("turn-outside-stop", Severity.BLOCKER, "Turns lie within their stop");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        for (Stay stay : Itinerary.of(outlook.event()).stays()) {
            for (Work work : stay.turns()) {
                if (!stay.window().contains(work.window())) {
                    findings.accept(Finding.of(this, Words.sentence(words.turn(work)) + ", reaches out of "
                            + words.stop(stay) + ".", work.turn(), stay.stop())
                            .at(work.window().start()).mendedBy(TrimTurn.to(stay.window(), work, "the stop", outlook)));
                }
            }
        }
    }
}
