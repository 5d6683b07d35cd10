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

/** Nobody has written down what the site is like. */
public final class VisitMissing extends ScopedRule<Site> {

    public VisitMissing() {
        super(Scope.SITE, CheckRule.VISIT_MISSING.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        UsedSite.first(site, in, use -> use.notes().visitState() == VisitState.MISSING).ifPresent(use -> findings
                .accept(use.finding(this, Statement.of("visitMissing.usedButNobody", "site", site,
                        "day", use.day()))));
    }
}
