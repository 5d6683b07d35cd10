package org.straddle.check.rules;

import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.grid.Square;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/** Two teams activate one square at once, which wastes one of them on chasers who work the other. */
final class SameSquare extends NamedRule {

    SameSquare() {
        super("same-square", Severity.BLOCKER, "One team in a square at a time");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Overlaps.pairs(Itinerary.of(outlook.event()).stays(), Stay::window, (a, b) -> {
            if (a.team() == b.team() || a.site() == b.site()) {
                return;
            }
            SortedSet<Square> common = new TreeSet<>(outlook.squares(a.site()));
            common.retainAll(outlook.squares(b.site()));
            if (!common.isEmpty()) {
                Window both = a.window().intersection(b.window()).orElseThrow();
                findings.accept(Finding.of(this, Words.sentence(Words.name(a.team())) + " at "
                        + Words.name(a.site()) + " and " + Words.name(b.team()) + " at " + Words.name(b.site())
                        + " both claim " + Words.list(common) + ", " + words.during(both) + ".",
                        a.stop(), b.stop()).at(both.start()));
            }
        });
    }
}
