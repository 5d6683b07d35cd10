package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** Nobody has put their name to a verdict on the hazards of the site. */
final class ReviewMissing extends NamedRule {

    ReviewMissing() {
        super("review-missing", Severity.WARNING, "Hazards of used sites were reviewed");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Itinerary.of(outlook.event()).bySite().forEach((site, stays) -> {
            if (Visits.newestReview(site).isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(site))
                        + " is in the plan, but nobody has reviewed its hazards.", site).at(stays.get(0).window().start()));
            }
        });
    }
}
