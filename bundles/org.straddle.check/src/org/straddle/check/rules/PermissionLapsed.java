package org.straddle.check.rules;

import java.time.LocalDate;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** The newest survey says until when access is allowed. */
final class PermissionLapsed extends NamedRule {

    PermissionLapsed() {
        super("permission-lapsed", Severity.WARNING, "The permission for a used site holds");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestSurvey(site).ifPresent(survey -> {
            LocalDate use = Visits.lastUse(stays, words);
            if (survey.getAccessUntil() != null && survey.getAccessUntil().isBefore(use)) {
                findings.accept(Finding.of(this, "The permission for " + Words.name(site) + " ends on "
                        + survey.getAccessUntil() + ", before the site is used on " + use + ".", site, survey)
                        .at(stays.get(0).window().start()));
            }
        }));
    }
}
