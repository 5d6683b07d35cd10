package org.straddle.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * The second name under a review. Two people see more than one, so a review that only one signed opens no gate.
 *
 * @param name of somebody of the event, and somebody else than the reviewer
 */
public record SecondSignature(String name, Instant at) {

    private static final Catalogue TEXTS = Catalogue.of(SecondSignature.class);

    /** Did a second person, with a time, sign it? */
    static boolean isUnder(Review review, Signers signers) {
        return review.getSecondAt() != null && !Written.isBlank(review.getSecond())
                && !signers.areOne(review.getSecond(), review.getReviewer());
    }

    /** The review of a site that waits for a second name on a day; empty when none does. */
    public static Optional<Review> awaited(Site site, LocalDate day, Policies policies) {
        ReviewState state = SiteReviews.state(site, day, policies);
        return state instanceof ReviewState.SignedOnce || state instanceof ReviewState.UnknownSigner unknown && unknown.second()
                ? SiteReviews.decisive(site, day) : Optional.empty();
    }

    /** What keeps it from being put under a review of a site, in a sentence; empty when nothing does. */
    public Optional<String> problem(Site site, Review review) {
        if (Written.isBlank(name)) {
            return Optional.of(TEXTS.text("signOff.enterYourName"));
        }
        Signers signers = Signers.of(site, review);
        if (signers.areOne(name, review.getReviewer())) {
            return Optional.of(TEXTS.text("secondSignature.samePerson", "reviewer", review.getReviewer().strip()));
        }
        return signers.isOfTheEvent(name) ? Optional.empty() : Optional.of(signers.whoSecond());
    }
}
