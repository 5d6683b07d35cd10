package org.straddle.safety;

import java.time.LocalDate;
import java.util.List;

import org.straddle.words.Catalogue;
import org.straddle.words.ListText;

/** What the reviews of a site amount to on one day. Only {@link Valid} lets a team use the site. */
public sealed interface ReviewState {

    Catalogue TEXTS = Catalogue.of(ReviewState.class);

    /** One or two words, for a label beside an icon. */
    String word();

    /** What it means and what to do, a plain sentence or two. */
    String sentence();

    /** Does a review hold on the day? */
    default boolean holds() {
        return this instanceof Valid;
    }

    /** Nobody signed a review dated on the day or before it. */
    record Missing(LocalDate day) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.missing.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.nobodySignedReview", "day", day);
        }
    }

    /**
     * A review holds.
     *
     * @param until the last day on which it does
     * @param conditions what it asks for, empty when it asks for nothing
     * @param second the second person who signed it
     */
    record Valid(String reviewer, LocalDate reviewed, LocalDate until, String conditions, String second) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.valid.word", "conditions", !conditions.isEmpty());
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.reviewedHoldsUntil", "reviewer", reviewer, "reviewed", reviewed,
                    "second", second, "until", until, "conditions", conditions.isEmpty() ? "" : TEXTS.text("reviewState.conditions",
                    "conditions", conditions));
        }
    }

    /** The reviewer signed, and no second person did. */
    record SignedOnce(String reviewer) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.signedOnce.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.signedOnce", "reviewer", reviewer);
        }
    }

    /**
     * Somebody signed whose name is nobody's who may.
     *
     * @param signer the name as it was written
     * @param second is it the second name?
     * @param may who may sign, in a sentence
     */
    record UnknownSigner(String signer, boolean second, String may) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.unknownSigner.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.unknownSigner", "signer", signer, "place", second ? "second" : "first", "may", may);
        }
    }

    /**
     * A review held and no longer does.
     *
     * @param since the first day on which it did not hold any more
     */
    record Expired(String reviewer, LocalDate since) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.expired.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.reviewHasNot", "reviewer", reviewer, "last", since.minusDays(1));
        }
    }

    /** The newest review says that the site must not be used; that does not lapse. */
    record Refused(String reviewer, String conditions) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.refused.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.doNotUse", "reviewer", reviewer,
                    "conditions", conditions.isEmpty() ? "" : " " + conditions);
        }
    }

    /**
     * Somebody visited the site after the visit that was reviewed.
     *
     * @param visited day of the newer visit; null when that visit has no date
     */
    record Outdated(String reviewer, LocalDate visited) implements ReviewState {
        @Override
        public String word() {
            return TEXTS.text("reviewState.outdated.word");
        }

        @Override
        public String sentence() {
            return visited == null ? TEXTS.text("reviewState.reviewDoesNot", "reviewer", reviewer)
                    : TEXTS.text("reviewState.beforeVisit", "reviewer", reviewer, "day", visited);
        }
    }

    /**
     * Something under the review is not what it was when it was signed.
     *
     * @param changed what, in words
     */
    record Fallen(String reviewer, List<String> changed) implements ReviewState {

        public Fallen {
            changed = List.copyOf(changed);
        }

        @Override
        public String word() {
            return TEXTS.text("reviewState.fallen.word");
        }

        @Override
        public String sentence() {
            return TEXTS.text("reviewState.fallen", "reviewer", reviewer, "changed", ListText.all(changed));
        }
    }
}
