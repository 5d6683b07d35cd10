package org.straddle.worth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Survey;
import org.straddle.safety.SafetyNotes;

/**
 * What a site lacks on a day before a team may use it. Empty means ready; that is a state of papers, not of the place:
 * whoever is on the spot decides.
 */
public record SiteReadiness(Set<Lack> lacks) {

    /** What can be missing. */
    public enum Lack {
        /** Nobody surveyed it, or the survey no longer holds. */
        SURVEY,
        /** No review holds. */
        REVIEW,
        /** The permission to be there ends before. */
        PERMISSION
    }

    public SiteReadiness {
        lacks = Set.copyOf(lacks);
    }

    /** @param policies null for the usual ones */
    public static SiteReadiness of(Site site, LocalDate day, Policies policies) {
        Policies chosen = policies != null ? policies : StraddleFactory.eINSTANCE.createPolicies();
        SafetyNotes notes = SafetyNotes.of(site, day, chosen);
        EnumSet<Lack> lacks = EnumSet.noneOf(Lack.class);
        Optional<Survey> survey = notes.survey();
        if (survey.isEmpty() || !holds(survey.get(), day, chosen)) {
            lacks.add(Lack.SURVEY);
        }
        if (!notes.state().holds()) {
            lacks.add(Lack.REVIEW);
        }
        if (survey.map(Survey::getAccessUntil).filter(until -> until.isBefore(day)).isPresent()) {
            lacks.add(Lack.PERMISSION);
        }
        return new SiteReadiness(lacks);
    }

    private static boolean holds(Survey survey, LocalDate day, Policies policies) {
        if (survey.getExpires() != null) {
            return !survey.getExpires().isBefore(day);
        }
        return survey.getDate() != null
                && ChronoUnit.DAYS.between(survey.getDate(), day) <= policies.getSurveyAgeLimitDays();
    }

    public boolean isReady() {
        return lacks.isEmpty();
    }

    /** The chance that the site can be used, 0 to 1. */
    public double chance(WorthFigures figures) {
        return isReady() ? 1 : figures.unready();
    }
}
