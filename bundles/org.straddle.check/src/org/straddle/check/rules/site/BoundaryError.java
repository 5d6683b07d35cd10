package org.straddle.check.rules.site;

import java.util.Locale;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Site;
import org.straddle.outlook.BoundaryRule;

/** On a line or corner the rule of the square awards wants a receiver that displays a small error. */
public final class BoundaryError extends ScopedRule<Site> {

    public BoundaryError() {
        super(Scope.SITE, CheckRule.BOUNDARY_ERROR.id(), Severity.WARNING);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        if (in.itinerary().at(site).isEmpty()) {
            return;
        }
        BoundaryRule.of(in.outlook(), site).filter(rule -> !rule.markSuffices()).ifPresent(rule -> findings.accept(
                Finding.of(this, Statement.of("boundaryError.liesItsMark", "site", site, "boundary", rule.boundary(),
                        "markErrorM", Statement.of("boundaryError.metres", "markErrorM", rule.markErrorM())), site)
                        .restingOn(in.outlook().position(site), site.getMarkErrorM())));
    }
}
