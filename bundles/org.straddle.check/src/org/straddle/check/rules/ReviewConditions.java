package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Verdict;
import org.straddle.outlook.Outlook;

/** The newest review lets the site be used only on conditions. */
final class ReviewConditions extends NamedRule {

    ReviewConditions() {
        super("review-conditions", Severity.ADVICE, "Conditions of reviews are known");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestReview(site)
                .filter(review -> review.getVerdict() == Verdict.ON_CONDITIONS)
                .ifPresent(review -> findings.accept(Finding.of(this, Words.sentence(Words.name(site))
                        + " may be used only on conditions: " + (Words.blank(review.getConditions())
                                ? "the review does not say which; ask the reviewer" : review.getConditions()) + ".",
                        site, review).at(stays.get(0).window().start()))));
    }
}
