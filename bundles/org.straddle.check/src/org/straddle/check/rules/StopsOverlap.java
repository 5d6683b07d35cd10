package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** Two stops of one team overlap. */
final class StopsOverlap extends NamedRule {

    StopsOverlap() {
        super("stops-overlap", Severity.BLOCKER, "A team is in one place at a time");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byTeam().forEach((team, stays) -> Overlaps.pairs(stays, Stay::window, (a, b) -> {
            Window both = a.window().intersection(b.window()).orElseThrow();
            Finding finding = Finding.of(this, Words.sentence(Words.name(team)) + " is at " + Words.name(a.site())
                    + " and at " + Words.name(b.site()) + " at the same time, " + words.during(both) + ".", a.stop(),
                    b.stop())
                    .at(both.start());
            findings.accept(ShiftStop.leaveEarlier(a, both.duration(), outlook, words).map(finding::mendedBy)
                    .orElse(finding));
        }));
    }
}
