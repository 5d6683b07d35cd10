package org.straddle.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Verdict;
import org.straddle.model.Written;
import org.straddle.outlook.PolicyFigures;
import org.straddle.words.Catalogue;

/**
 * A review about to be signed: what the reviewer says, what is still wrong with it, and the review that comes of it.
 *
 * @param reviewer the name under it
 * @param date day of the review
 * @param conditions what must be so; needed for the verdict "on conditions"
 * @param expires last day on which it holds
 */
public record SignOff(String reviewer, LocalDate date, Verdict verdict, String conditions, LocalDate expires) {

    private static final Catalogue TEXTS = Catalogue.of(SignOff.class);

    /** Starts one with the expiry that the event's policies grant. */
    public static SignOff on(LocalDate date, Policies policies) {
        return new SignOff("", date, Verdict.GO_WITH_CARE, "", lastDay(date, policies));
    }

    /** Last day on which a review of the date holds by the event's policies. */
    public static LocalDate lastDay(LocalDate date, Policies policies) {
        return date.plusDays(PolicyFigures.of(policies).reviewValidityDays());
    }

    /** What keeps it from being signed for a site, one plain sentence each; empty when nothing does. */
    public List<String> problems(Site site) {
        List<String> problems = new ArrayList<>(signerProblem(site, reviewer, verdict).stream().toList());
        if (verdict == Verdict.ON_CONDITIONS && (conditions == null || conditions.isBlank())) {
            problems.add(TEXTS.text("signOff.sayWhatConditions"));
        }
        if (verdict == Verdict.DO_NOT_USE && (conditions == null || conditions.isBlank())) {
            problems.add(TEXTS.text("signOff.sayWhySite"));
        }
        if (date == null || expires == null) {
            problems.add(TEXTS.text("signOff.enterBothDays"));
        } else if (expires.isBefore(date)) {
            problems.add(TEXTS.text("signOff.lastDayBefore", "expires", expires, "date", date));
        }
        return problems;
    }

    /**
     * Why a name cannot be the first under a review of a site, in a sentence. Anybody of the event may call a site off.
     *
     * @param verdict null while nobody chose one
     */
    public static Optional<String> signerProblem(Site site, String name, Verdict verdict) {
        if (Written.isBlank(name)) {
            return Optional.of(TEXTS.text("signOff.enterYourName"));
        }
        Signers signers = Signers.of(site, null);
        boolean may = signers.first(name).isPresent() || verdict == Verdict.DO_NOT_USE && signers.isOfTheEvent(name);
        return may ? Optional.empty() : Optional.of(signers.whoFirst());
    }

    /**
     * The review, not yet added to the site; it names the newest visit of its day, if there is one, and
     * keeps what else lies under it. It names the reviewer's team. It opens no gate before a second person signs it too.
     *
     * @param at when it is signed
     * @throws IllegalStateException if there are {@link #problems}
     */
    public Review review(Site site, Instant at) {
        Optional<String> problem = problems(site).stream().findFirst();
        if (problem.isPresent()) {
            throw new IllegalStateException(problem.get());
        }
        Review review = Fresh.review();
        review.setReviewer(reviewer.strip());
        review.setDate(date);
        review.setSignedAt(at);
        review.setVerdict(verdict);
        review.setConditions(Written.or(conditions, null));
        review.setExpires(expires);
        Signers signers = Signers.of(site, null);
        signers.first(reviewer).flatMap(signers::teamOf).ifPresent(review::setTeam);
        SiteReviews.newestVisit(site, date).ifPresent(review::setVisit);
        review.getBasis().addAll(ReviewBasis.of(site, SiteReviews.newestVisit(site, date)));
        return review;
    }
}
