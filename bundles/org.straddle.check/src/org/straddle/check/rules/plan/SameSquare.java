package org.straddle.check.rules.plan;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.mend.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.grid.Square;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** Two teams activate one square at once, which wastes one of them on chasers who work the other. */
public final class SameSquare extends ScopedRule<Square> {

    public SameSquare() {
        super(Scope.SQUARE, "same-square", Severity.BLOCKER, "One team in a square at a time");
    }

    @Override
    public void check(Square square, Inspection in, Consumer<Finding> findings) {
        List<Stay> stays = in.claims().get(square).stream().flatMap(site -> in.itinerary().at(site).stream())
                .sorted(Itinerary.BY_TIME).toList();
        Overlaps.pairs(stays, Stay::window, (a, b) -> {
            SortedSet<Square> common = new TreeSet<>(in.outlook().squares(a.site()));
            common.retainAll(in.outlook().squares(b.site()));
            // Two stops that share several squares are told of once.
            if (a.team() != b.team() && a.site() != b.site() && common.first().equals(square)) {
                Window both = a.window().intersection(b.window()).orElseThrow();
                Finding finding = Finding.of(this, Words.sentence(Words.name(a.team())) + " at "
                        + Words.name(a.site()) + " and " + Words.name(b.team()) + " at " + Words.name(b.site())
                        + " both claim " + Words.list(common) + ", " + in.words().during(both) + ".",
                        a.stop(), b.stop()).at(both.start());
                findings.accept(ShiftStop.apart(a, b, in).map(finding::mendedBy).orElse(finding));
            }
        });
    }
}
