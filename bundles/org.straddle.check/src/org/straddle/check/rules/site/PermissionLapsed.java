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

/** The newest visit says until when access is allowed. */
public final class PermissionLapsed extends ScopedRule<Site> {

    public PermissionLapsed() {
        super(Scope.SITE, CheckRule.PERMISSION_LAPSED.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        UsedSite.first(site, in, use -> use.notes().permissionLapsed().isPresent())
                .ifPresent(use -> findings.accept(use.finding(this, Statement.of("permissionLapsed.permissionEndsBefore",
                        "site", site, "until", use.notes().permissionLapsed().orElseThrow(), "day", use.day()))));
    }
}
