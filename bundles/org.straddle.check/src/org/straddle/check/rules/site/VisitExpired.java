package org.straddle.check.rules.site;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.UsedSite;
import org.straddle.model.Site;
import org.straddle.safety.VisitState;

/** Whoever visited a site may have written down until when the visit holds. */
public final class VisitExpired extends ScopedRule<Site> {

    public VisitExpired() {
        super(Scope.SITE, CheckRule.VISIT_EXPIRED.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        UsedSite.first(site, in, use -> use.notes().visitState() == VisitState.EXPIRED)
                .ifPresent(use -> findings.accept(use.finding(this, Statement.of("visitExpired.newestVisitHolds",
                        "site", site, "expiry", use.notes().visit().orElseThrow().getExpires(), "day", use.day()))));
    }
}
