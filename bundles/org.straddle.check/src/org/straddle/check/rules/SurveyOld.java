package org.straddle.check.rules;

import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** Roads, fences and woods change. */
final class SurveyOld extends NamedRule {

    SurveyOld() {
        super("survey-old", Severity.WARNING, "Surveys of used sites are recent");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        int limit = outlook.policies().surveyAgeLimitDays();
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestSurvey(site).ifPresent(survey -> {
            long age = ChronoUnit.DAYS.between(survey.getDate(), Visits.lastUse(stays, words));
            if (age > limit) {
                findings.accept(Finding.of(this, "The newest survey of " + Words.name(site) + ", of " + survey.getDate()
                        + ", will be " + Words.count(age, "day") + " old when the site is used; the limit of this event is "
                        + Words.count(limit, "day") + ".", site, survey).at(stays.get(0).window().start()));
            }
        }));
    }
}
