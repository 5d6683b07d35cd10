package org.straddle.check.rules.plan;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.grid.Square;
import org.straddle.outlook.itinerary.Company;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** Two teams activate one square at once, which wastes one of them on chasers who work the other. */
public final class SameSquare extends ScopedRule<Square> {

    public SameSquare() {
        super(Scope.SQUARE, PlanRule.SAME_SQUARE.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Square square, Inspection in, Consumer<Finding> findings) {
        List<Stay> stays = in.claims().get(square).stream().flatMap(site -> in.itinerary().at(site).stream())
                .sorted(Itinerary.BY_TIME).toList();
        Overlaps.pairs(stays, Stay::window, (a, b) -> {
            SortedSet<Square> common = Company.common(in.outlook(), a.site(), b.site());
            // Two stops that share several squares are told of once.
            if (common.first().equals(square)
                    && Company.broken(in.outlook(), a, b).equals(Optional.of(PlanRule.SAME_SQUARE))) {
                Window both = a.window().intersection(b.window()).orElseThrow();
                Finding finding = Finding.of(this, Statement.of("sameSquare.bothClaim", "team", a.team(),
                        "site", a.site(), "team2", b.team(), "site2", b.site(), "common", common, "during", both),
                        a.stop(), b.stop()).at(both.start());
                findings.accept(ShiftStop.apart(a, b, in).map(finding::fixedBy).orElse(finding));
            }
        });
    }
}
