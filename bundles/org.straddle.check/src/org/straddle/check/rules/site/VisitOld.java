package org.straddle.check.rules.site;

import java.time.temporal.ChronoUnit;
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

/** Roads, fences and woods change. */
public final class VisitOld extends ScopedRule<Site> {

    public VisitOld() {
        super(Scope.SITE, CheckRule.VISIT_OLD.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        UsedSite.first(site, in, use -> use.notes().visitState() == VisitState.OLD).ifPresent(use -> findings.accept(
                use.finding(this, Statement.of("visitOld.newestVisitWill", "site", site, "ageDays", ageDays(use),
                        "day", use.day(), "limit", in.policies().visitAgeLimitDays()))));
    }

    private static long ageDays(UsedSite use) {
        return ChronoUnit.DAYS.between(use.notes().visit().orElseThrow().getDate(), use.day());
    }
}
