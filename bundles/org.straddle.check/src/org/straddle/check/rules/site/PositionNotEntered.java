package org.straddle.check.rules.site;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Site;

/** Latitude and longitude 0 are what a new site starts with. */
public final class PositionNotEntered extends ScopedRule<Site> {

    public PositionNotEntered() {
        super(Scope.SITE, CheckRule.POSITION_NOT_ENTERED.id(), Severity.WARNING);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        if (site.getLatitudeDeg() == 0 && site.getLongitudeDeg() == 0) {
            findings.accept(Finding.of(this, Statement.of("positionNotEntered.latitudeLongitudeIts", "site", site), site));
        }
    }
}
