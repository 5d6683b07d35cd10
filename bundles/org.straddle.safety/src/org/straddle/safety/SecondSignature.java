package org.straddle.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * The second name under a review. Two people see more than one, so a review that only one signed opens no gate.
 *
 * @param name of somebody else than the reviewer
 */
public record SecondSignature(String name, Instant at) {

    private static final Catalogue TEXTS = Catalogue.of(SecondSignature.class);

    /** Did a second person, with a time, sign it? */
    static boolean isUnder(Review review) {
        return review.getSecondAt() != null && !same(review.getSecond(), review.getReviewer())
                && !Written.or(review.getSecond(), "").isEmpty();
    }

    /** The review of a site that waits for a second name on a day; empty when none does. */
    public static Optional<Review> awaited(Site site, LocalDate day, Policies policies) {
        return SiteReviews.state(site, day, policies) instanceof ReviewState.SignedOnce ? SiteReviews.decisive(site, day) : Optional.empty();
    }

    /** What keeps it from being put under a review, a sentence each; empty when nothing does. */
    public List<String> problems(Review review) {
        List<String> problems = new ArrayList<>();
        if (Written.or(name, "").isEmpty()) {
            problems.add(TEXTS.text("signOff.enterYourName"));
        } else if (same(name, review.getReviewer())) {
            problems.add(TEXTS.text("secondSignature.samePerson", "reviewer", review.getReviewer().strip()));
        }
        return problems;
    }

    private static boolean same(String one, String other) {
        return Written.or(one, "").equalsIgnoreCase(Written.or(other, ""));
    }
}
