package org.straddle.check.rules.site;

import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Visit;
import org.straddle.check.rules.Words;
import org.straddle.model.Site;
import org.straddle.model.Survey;

/** Roads, fences and woods change. */
public final class SurveyOld extends ScopedRule<Site> {

    public SurveyOld() {
        super(Scope.SITE, "survey-old", Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        int limit = in.policies().surveyAgeLimitDays();
        Visit.first(site, in, visit -> ageDays(visit) > limit && !saysItself(visit)).ifPresent(visit -> findings.accept(visit.finding(this,
                Statement.of("surveyOld.newestSurveyWill", "site", site, "ageDays", ageDays(visit), "day", visit.day(),
                        "limit", limit))));
    }

    /** Where the survey says until when it holds, that counts, and another rule reads it. */
    private static boolean saysItself(Visit visit) {
        return visit.notes().survey().map(Survey::getExpires).isPresent();
    }

    /** 0 without a survey, or with one that has no date. */
    private static long ageDays(Visit visit) {
        return visit.notes().survey().map(Survey::getDate).map(date -> ChronoUnit.DAYS.between(date, visit.day()))
                .orElse(0L);
    }
}
