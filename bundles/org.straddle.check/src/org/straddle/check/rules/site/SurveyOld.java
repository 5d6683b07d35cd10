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
import org.straddle.check.rules.Visit;
import org.straddle.model.Site;
import org.straddle.safety.SurveyState;

/** Roads, fences and woods change. */
public final class SurveyOld extends ScopedRule<Site> {

    public SurveyOld() {
        super(Scope.SITE, CheckRule.SURVEY_OLD.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Visit.first(site, in, visit -> visit.notes().surveyState() == SurveyState.OLD).ifPresent(visit -> findings.accept(
                visit.finding(this, Statement.of("surveyOld.newestSurveyWill", "site", site, "ageDays", ageDays(visit),
                        "day", visit.day(), "limit", in.policies().surveyAgeLimitDays()))));
    }

    private static long ageDays(Visit visit) {
        return ChronoUnit.DAYS.between(visit.notes().survey().orElseThrow().getDate(), visit.day());
    }
}
