package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Verdict;
import org.straddle.outlook.Outlook;

/** The newest review says that the site must not be used. */
final class SiteRefused extends NamedRule {

    SiteRefused() {
        super("site-refused", Severity.BLOCKER, "No refused site is used");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> Visits.newestReview(site)
                .filter(review -> review.getVerdict() == Verdict.DO_NOT_USE)
                .ifPresent(review -> findings.accept(Finding.of(this, Words.sentence(Words.name(site))
                        + " is in the plan, but the review of " + review.getDate()
                        + (Words.blank(review.getReviewer()) ? "" : " by " + review.getReviewer())
                        + " says that it must not be used.", site, review).at(stays.get(0).window().start()))));
    }
}
