package org.straddle.check.rules.site;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Site;
import org.straddle.outlook.itinerary.Stay;

/** A stop at a site that claims no square gives chasers nothing. */
public final class SiteWithoutSquares extends ScopedRule<Site> {

    public SiteWithoutSquares() {
        super(Scope.SITE, CheckRule.SITE_WITHOUT_SQUARES.id(), Severity.WARNING);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        List<Stay> stays = in.itinerary().at(site);
        if (!stays.isEmpty() && in.outlook().squares(site).isEmpty()) {
            findings.accept(Finding.of(this, Statement.of("siteWithoutSquares.planButClaims", "site", site), site)
                    .at(stays.get(0).window().start()));
        }
    }
}
