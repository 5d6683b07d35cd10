package org.straddle.safety;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.HazardKind;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Survey;
import org.straddle.outlook.PolicyFigures;
import org.straddle.words.Catalogue;

/**
 * What a team must know about the hazards of a site on one day: what the newest survey saw, what the surveyor says
 * about each hazard, the usual cautions for its kind, and whether a review holds.
 *
 * <p>The cautions are usual practice from published sources, not a measure of a real place: local codes, the owner's
 * rules and licensed people come first, and the sheet says so.
 *
 * @param survey the newest survey dated on the day or before
 * @param review the review that decides; empty when none counts
 * @param remarks what else wants attention: a stale survey, a lapsed permission, a road that no hazard mentions
 */
public record SafetyNotes(Site site, LocalDate day, Optional<Survey> survey, List<HazardNote> hazards,
        Optional<Review> review, ReviewState state, List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(SafetyNotes.class);

    /** Stands under every list of cautions. */
    public static final String DEFERENCE = TEXTS.text("safetyNotes.theseUsualCautions");

    public SafetyNotes {
        hazards = List.copyOf(hazards);
        remarks = List.copyOf(remarks);
    }

    /** With the policies of the event that the site belongs to, or the usual ones when it stands alone. */
    public static SafetyNotes of(Site site, LocalDate day) {
        Policies policies = site.eContainer() instanceof Event event ? event.getPolicies() : null;
        return of(site, day, policies);
    }

    /**
     * @param day a local day of the event
     * @param policies null for the usual ones
     */
    public static SafetyNotes of(Site site, LocalDate day, Policies policies) {
        return of(site, day, policies, Light.UNKNOWN);
    }

    /**
     * @param day a local day of the event
     * @param policies null for the usual ones
     * @param light worst light while the team is there
     */
    public static SafetyNotes of(Site site, LocalDate day, Policies policies, Light light) {
        Policies chosen = policies != null ? policies : StraddleFactory.eINSTANCE.createPolicies();
        Occasion occasion = Occasion.of(day, light, chosen);
        Optional<Survey> survey = SiteReviews.newestSurvey(site, day);
        return new SafetyNotes(site, day, survey, survey.map(there -> hazards(site, there, occasion)).orElse(List.of()),
                SiteReviews.decisive(site, day), SiteReviews.state(site, day, chosen), remarks(survey, occasion, chosen));
    }

    /** Overhead wires first: nothing else kills as fast. */
    private static List<HazardNote> hazards(Site site, Survey visit, Occasion occasion) {
        return Stream.concat(HazardNote.ofWires(site, visit, occasion).stream(), visit.getHazards().stream()
                .filter(hazard -> hazard.getKind() != HazardKind.POWER_LINE)
                .map(hazard -> HazardNote.of(hazard, visit, occasion))).toList();
    }

    private static List<String> remarks(Optional<Survey> newest, Occasion occasion, Policies policies) {
        LocalDate day = occasion.day();
        if (newest.isEmpty()) {
            return List.of(TEXTS.text("safetyNotes.nobodySurveyedSite", "day", day));
        }
        Survey survey = newest.get();
        List<String> remarks = new ArrayList<>();
        if (survey.getDate() == null) {
            remarks.add(TEXTS.text("safetyNotes.surveyHasDate"));
        } else if (ChronoUnit.DAYS.between(survey.getDate(), day) > PolicyFigures.of(policies).surveyAgeLimitDays()) {
            remarks.add(TEXTS.text("safetyNotes.surveyOlderThan", "date", survey.getDate(),
                    "surveyAgeLimitDays", PolicyFigures.of(policies).surveyAgeLimitDays()));
        }
        if (survey.getAccessUntil() != null && survey.getAccessUntil().isBefore(day)) {
            remarks.add(TEXTS.text("safetyNotes.permissionThereHeld", "accessUntil", survey.getAccessUntil()));
        }
        if (survey.getHazards().isEmpty() && survey.getOverheadLines().isEmpty()) {
            remarks.add(TEXTS.text("safetyNotes.surveyNamesHazard"));
        }
        if (survey.getRoadSpeedKmh() > 0
                && survey.getHazards().stream().noneMatch(hazard -> hazard.getKind() == HazardKind.TRAFFIC)) {
            remarks.add(TEXTS.text("safetyNotes.trafficPassesKm",
                    "roadSpeedKmh", Words.number(survey.getRoadSpeedKmh()),
                    "traffic", String.join(" ", Cautions.traffic(survey.getRoadSpeedKmh(), occasion.light()))));
        }
        return remarks;
    }
}
