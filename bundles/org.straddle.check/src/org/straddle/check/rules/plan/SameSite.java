package org.straddle.check.rules.plan;

import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ShiftStop;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Site;
import org.straddle.outlook.itinerary.Company;
import org.straddle.outlook.itinerary.Overlaps;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** Two teams would stand on one mark. */
public final class SameSite extends ScopedRule<Site> {

    public SameSite() {
        super(Scope.SITE, PlanRule.SAME_SITE.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Overlaps.pairs(in.itinerary().at(site), Stay::window, (a, b) -> {
            if (Company.broken(in.outlook(), a, b).equals(Optional.of(PlanRule.SAME_SITE))) {
                Window both = a.window().intersection(b.window()).orElseThrow();
                Finding finding = Finding.of(this, Statement.of("sameSite.both", "team", a.team(), "team2", b.team(),
                        "site", site, "during", both), a.stop(), b.stop(),
                        site)
                        .at(both.start());
                findings.accept(ShiftStop.apart(a, b, in).map(finding::fixedBy).orElse(finding));
            }
        });
    }
}
