package org.straddle.check.rules.site;

import java.util.function.Consumer;
import java.util.function.Predicate;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.UsedSite;
import org.straddle.model.Site;
import org.straddle.safety.ReviewState;

/** What the reviews of the used sites amount to, told as findings: one rule for each state of review. */
public final class HazardReview extends ScopedRule<Site> {

    private final Predicate<ReviewState> telling;

    public HazardReview(CheckRule rule, Severity severity, Predicate<ReviewState> telling) {
        super(Scope.SITE, rule.id(), severity);
        this.telling = telling;
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        UsedSite.first(site, in, use -> telling.test(use.notes().state())).ifPresent(use -> findings.accept(
                use.finding(this, Statement.of("hazardReview.used", "site", site, "day", use.day(),
                        "ended", ended(use.notes().state().sentence())))));
    }

    /** Conditions are free text, which may stop without a full stop. */
    private static String ended(String text) {
        return text.matches("(?s).*[.!?]\\s*") ? text.strip() : text.strip() + ".";
    }
}
