package org.straddle.check.rules;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Survey;

/** The surveys and reviews of a site in the order of their dates. */
final class Visits {

    private Visits() {
    }

    /** The survey with the latest date; of two on one day the one written down later. */
    static Optional<Survey> newestSurvey(Site site) {
        return site.getSurveys().stream().filter(survey -> survey.getDate() != null)
                .reduce((a, b) -> b.getDate().isBefore(a.getDate()) ? a : b);
    }

    /** The review with the latest date; of two on one day the one written down later. */
    static Optional<Review> newestReview(Site site) {
        return site.getReviews().stream().filter(review -> review.getDate() != null)
                .reduce((a, b) -> b.getDate().isBefore(a.getDate()) ? a : b);
    }

    /** The local date on which a site is used for the last time. */
    static LocalDate lastUse(List<Stay> stays, Words words) {
        return stays.stream().map(stay -> words.date(stay.window().end())).max(LocalDate::compareTo).orElseThrow();
    }
}
