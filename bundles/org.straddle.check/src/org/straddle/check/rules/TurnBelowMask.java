package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Pass;

/** Part of the turn has the bird behind the ground, woods or walls that the horizon mask records. */
final class TurnBelowMask extends NamedRule {

    TurnBelowMask() {
        super("turn-below-mask", Severity.BLOCKER, "Turns lie within their pass");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        for (Work work : Itinerary.of(outlook.event()).turns()) {
            if (TurnPass.isKnown(outlook, work)) {
                TurnPass.best(outlook, work).map(Pass::window).filter(pass -> !TurnPass.contains(pass, work.window()))
                        .ifPresent(pass -> findings.accept(Finding.of(this, Words.sentence(words.turn(work))
                                + ", reaches out of the pass over the horizon of " + Words.name(work.site()) + ", "
                                + words.during(pass) + ".", work.turn()).at(work.window().start())
                                .mendedBy(TrimTurn.to(pass, work, "the pass", outlook))));
            }
        }
    }
}
