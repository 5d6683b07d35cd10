package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** Two teams would stand on one mark. */
final class SameSite extends NamedRule {

    SameSite() {
        super("same-site", Severity.BLOCKER, "One team at a site at a time");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Overlaps.pairs(stays, Stay::window, (a, b) -> {
            if (a.team() != b.team()) {
                Window both = a.window().intersection(b.window()).orElseThrow();
                Finding finding = Finding.of(this, Words.sentence(Words.name(a.team())) + " and " + Words.name(b.team())
                        + " are both at " + Words.name(site) + ", " + words.during(both) + ".", a.stop(), b.stop(),
                        site)
                        .at(both.start());
                findings.accept(ShiftStop.arriveLater(b, both.duration(), outlook, words).map(finding::mendedBy)
                        .orElse(finding));
            }
        }));
    }
}
