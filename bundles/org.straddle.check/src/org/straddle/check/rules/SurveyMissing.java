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
        Visit.first(outlook, visit -> visit.notes().survey().isEmpty()).forEach(visit -> findings
                .accept(visit.finding(this, Words.sentence(Words.name(visit.site())) + " is to be used on "
                        + visit.day() + ", but nobody has surveyed it by then.")));
    }
}
