package org.straddle.safety;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.Verdict;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;

/**
 * Finds the one review of a site that counts on a day, and what it amounts to.
 *
 * <p>The newest review decides, and what was written after the day does not count for it. Two cases are decided for
 * the side of care: a refusal counts even without a name or a date and never lapses, while a go without either is
 * nobody's word and is passed over. Visit and review without a date are taken as the newest of their kind, because
 * the lists are kept oldest first and a fact must not vanish for want of a date.
 */
final class SiteReviews {

    private static final Catalogue TEXTS = Catalogue.of(SiteReviews.class);

    private static final Comparator<Review> BY_DATE =
            Comparator.comparing(Review::getDate, Comparator.nullsLast(Comparator.naturalOrder()));

    private SiteReviews() {
    }

    /** The newest visit of the site dated on the day or before. */
    static Optional<Visit> newestVisit(Site site, LocalDate day) {
        return site.getVisits().stream()
                .filter(visit -> visit.getDate() == null || !visit.getDate().isAfter(day))
                .sorted(Comparator.comparing(Visit::getDate, Comparator.nullsLast(Comparator.naturalOrder())))
                .reduce((older, newer) -> newer);
    }

    /** A refusal that nobody lifted, or else the newest review that is signed. */
    static Optional<Review> decisive(Site site, LocalDate day) {
        List<Review> asEntered = site.getReviews().stream()
                .filter(review -> review.getDate() == null || !review.getDate().isAfter(day))
                .filter(review -> refuses(review) || signed(review)).toList();
        return newest(IntStream.range(0, asEntered.size()).filter(at -> refuses(asEntered.get(at)))
                .filter(at -> asEntered.subList(at + 1, asEntered.size()).stream().noneMatch(later -> lifts(later, asEntered.get(at), site)))
                .mapToObj(asEntered::get)).or(() -> newest(asEntered.stream()));
    }

    /** Of the same day the one that was entered later. */
    private static Optional<Review> newest(Stream<Review> reviews) {
        return reviews.sorted(BY_DATE).reduce((older, newer) -> newer);
    }

    /** Only who may sign and knew of a refusal lifts it: the date alone may lie ahead, or be a slip. */
    private static boolean lifts(Review later, Review refusal, Site site) {
        return !refuses(later) && BY_DATE.compare(later, refusal) >= 0 && Signers.of(site, later).first(later.getReviewer()).isPresent();
    }

    static ReviewState state(Site site, LocalDate day, Policies policies) {
        return decisive(site, day).map(review -> state(review, site, day, policies))
                .orElseGet(() -> new ReviewState.Missing(day));
    }

    private static ReviewState state(Review review, Site site, LocalDate day, Policies policies) {
        String reviewer = Written.or(review.getReviewer(), TEXTS.text("siteReviews.reviewerWithoutName"));
        String conditions = Written.or(review.getConditions(), "");
        if (refuses(review)) {
            return new ReviewState.Refused(reviewer, conditions);
        }
        Optional<Visit> newest = newestVisit(site, day);
        if (newest.isPresent() && isNewer(newest.get(), review)) {
            return new ReviewState.Outdated(reviewer, newest.get().getDate());
        }
        List<String> changed = ReviewBasis.changed(review, site, newest);
        if (!changed.isEmpty()) {
            return new ReviewState.Fallen(reviewer, changed);
        }
        LocalDate until = lastDay(review, policies);
        if (day.isAfter(until)) {
            return new ReviewState.Expired(reviewer, until.plusDays(1));
        }
        Signers signers = Signers.of(site, review);
        if (signers.first(reviewer).isEmpty()) {
            return new ReviewState.UnknownSigner(reviewer, false, signers.whoFirst());
        } else if (!SecondSignature.isUnder(review, signers)) {
            return new ReviewState.SignedOnce(reviewer);
        }
        String second = review.getSecond().strip();
        return signers.isOfTheEvent(second) ? new ReviewState.Valid(reviewer, review.getDate(), until, conditions, second)
                : new ReviewState.UnknownSigner(second, true, signers.whoSecond());
    }

    /** The review's own expiry, else its date and the days that the event's policies grant. */
    static LocalDate lastDay(Review review, Policies policies) {
        return review.getExpires() != null ? review.getExpires() : SignOff.lastDay(review.getDate(), policies);
    }

    /** A review that names its visit knows that one; one that names none knows what was there on its day. */
    private static boolean isNewer(Visit newest, Review review) {
        Visit known = review.getVisit();
        if (known != null && !known.eIsProxy()) {
            return known != newest && (known.getDate() == null || newest.getDate() == null
                    || !known.getDate().isAfter(newest.getDate()));
        }
        return newest.getDate() == null || newest.getDate().isAfter(review.getDate());
    }

    private static boolean refuses(Review review) {
        return review.getVerdict() == Verdict.DO_NOT_USE;
    }

    private static boolean signed(Review review) {
        return review.getDate() != null && review.getReviewer() != null && !review.getReviewer().isBlank();
    }
}
