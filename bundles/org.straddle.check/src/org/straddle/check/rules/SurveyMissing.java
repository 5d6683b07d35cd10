package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** Nobody has written down what the site is like. */
final class SurveyMissing extends NamedRule {

    SurveyMissing() {
        super("survey-missing", Severity.WARNING, "Used sites were surveyed");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> {
            if (site.getSurveys().isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(site))
                        + " is in the plan, but nobody has surveyed it.", site).at(stays.get(0).window().start()));
            }
        });
    }
}
