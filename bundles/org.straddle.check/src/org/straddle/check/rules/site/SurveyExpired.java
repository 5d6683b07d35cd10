package org.straddle.check.rules.site;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Visit;
import org.straddle.model.Site;
import org.straddle.safety.SurveyState;

/** Whoever surveyed a site may have written down until when the survey holds. */
public final class SurveyExpired extends ScopedRule<Site> {

    public SurveyExpired() {
        super(Scope.SITE, CheckRule.SURVEY_EXPIRED.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Visit.first(site, in, visit -> visit.notes().surveyState() == SurveyState.EXPIRED)
                .ifPresent(visit -> findings.accept(visit.finding(this, Statement.of("surveyExpired.newestSurveyHolds",
                        "site", site, "expiry", visit.notes().survey().orElseThrow().getExpires(), "day", visit.day()))));
    }
}
