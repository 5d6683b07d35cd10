package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** The bird never comes above the site's horizon during the turn. */
final class TurnWithoutPass extends NamedRule {

    TurnWithoutPass() {
        super("turn-without-pass", Severity.BLOCKER, "There is a pass for every turn");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        for (Work work : Itinerary.of(outlook.event()).turns()) {
            if (TurnPass.isKnown(outlook, work) && TurnPass.best(outlook, work).isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(work.bird()))
                        + " is not above the horizon of " + Words.name(work.site()) + " during " + words.turn(work)
                        + ".", work.turn()).at(work.window().start())
                        .mendedBy(RemoveTurns.of(work)));
            }
        }
    }
}
