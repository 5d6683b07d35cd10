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

/** Nobody has written down what the site is like. */
public final class SurveyMissing extends ScopedRule<Site> {

    public SurveyMissing() {
        super(Scope.SITE, CheckRule.SURVEY_MISSING.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Visit.first(site, in, visit -> visit.notes().surveyState() == SurveyState.MISSING).ifPresent(visit -> findings
                .accept(visit.finding(this, Statement.of("surveyMissing.usedButNobody", "site", site,
                        "day", visit.day()))));
    }
}
