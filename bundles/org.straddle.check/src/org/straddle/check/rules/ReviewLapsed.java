package org.straddle.check.rules;

import java.time.LocalDate;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** A review holds until the day it names, or for the time the policy gives. */
final class ReviewLapsed extends NamedRule {

    ReviewLapsed() {
        super("review-lapsed", Severity.WARNING, "Reviews of used sites still hold");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestReview(site).ifPresent(review -> {
            LocalDate holds = review.getExpires() != null ? review.getExpires()
                    : review.getDate().plusDays(outlook.policies().reviewValidityDays());
            LocalDate use = Visits.lastUse(stays, words);
            if (holds.isBefore(use)) {
                findings.accept(Finding.of(this, "The review of " + Words.name(site) + " of " + review.getDate()
                        + " holds until " + holds + ", but the site is used on " + use + ".", site, review)
                        .at(stays.get(0).window().start()));
            }
        }));
    }
}
