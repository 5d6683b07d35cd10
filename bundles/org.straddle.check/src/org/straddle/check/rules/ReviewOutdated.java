package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A later survey may have seen hazards that the review does not know. */
final class ReviewOutdated extends NamedRule {

    ReviewOutdated() {
        super("review-outdated", Severity.WARNING, "Reviews rest on the newest survey");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestReview(site)
                .ifPresent(review -> Visits.newestSurvey(site).ifPresent(survey -> {
                    boolean reviewed = Itinerary.isMissing(review.getSurvey()) ? !survey.getDate().isAfter(review.getDate())
                            : review.getSurvey() == survey;
                    if (!reviewed) {
                        findings.accept(Finding.of(this, "The review of " + Words.name(site) + " of " + review.getDate()
                                + " does not rest on the newest survey, of " + survey.getDate() + ". Review it again.", site,
                                review, survey).at(stays.get(0).window().start()));
                    }
                })));
    }
}
