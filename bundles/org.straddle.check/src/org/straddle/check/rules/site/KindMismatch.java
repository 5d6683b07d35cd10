package org.straddle.check.rules.site;

import java.util.Optional;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ChangeSite;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.grid.Standing;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.Outlook;

/** Inside, line and corner sites claim one, two and four squares. */
public final class KindMismatch extends ScopedRule<Site> {

    /** Beyond this the question has no meaning. */
    private static final double FARTHEST_M = 10_000;

    public KindMismatch() {
        super(Scope.SITE, CheckRule.KIND_MISMATCH.id(), Severity.WARNING);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        int claimed = in.outlook().squares(site).size();
        int wanted = switch (site.getKind()) {
            case INSIDE -> 1;
            case LINE -> 2;
            case CORNER -> 4;
        };
        if (claimed > 0 && claimed != wanted) {
            Finding finding = Finding.of(this, Statement.of("kindMismatch.writtenDownAs", "site", site,
                    "kind", site.getKind(), "wanted", wanted, "claimed", claimed,
                    "possible", possible(in.outlook(), site)), site);
            findings.accept(kindOf(claimed).map(kind -> (Fix) new ChangeSite(Statement.of("kindMismatch.writeDownAs",
                    "kind", kind), site.getId(), StraddlePackage.Literals.SITE__KIND, kind)).map(finding::fixedBy)
                    .orElse(finding));
        }
    }

    private static Optional<SiteKind> kindOf(int squares) {
        return switch (squares) {
            case 1 -> Optional.of(SiteKind.INSIDE);
            case 2 -> Optional.of(SiteKind.LINE);
            case 4 -> Optional.of(SiteKind.CORNER);
            default -> Optional.empty();
        };
    }

    private static Object possible(Outlook outlook, Site site) {
        if (!outlook.isPlaced(site) || !(site.getMarkErrorM() >= 0) || site.getMarkErrorM() > FARTHEST_M) {
            return "";
        }
        double spanM = Math.min(outlook.policies().stationSpanM(), FARTHEST_M);
        Standing standing = Standing.of(outlook.position(site), site.getMarkErrorM(), spanM);
        return Statement.of("kindMismatch.fromItsMark", "squares", standing.squares());
    }
}
