package org.straddle.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Operator;
import org.straddle.model.OverheadLine;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Verdict;

/**
 * A site's papers in a few words, parted by semicolons, on days of 2031: "visit 06-01" and "review 06-02 by Q0AAR",
 * then "until 06-30", "of 06-01" for the visit that was reviewed, "refuse", "if rain stops". A day "?" is missing.
 * The site is of an event with operators who are called like the signers.
 */
final class SiteNotation {

    private SiteNotation() {
    }

    static LocalDate day(String monthDay) {
        return monthDay.equals("?") ? null : LocalDate.parse("2031-" + monthDay);
    }

    static Site site(String papers) {
        Site site = Fresh.site();
        site.setName("Gate");
        Event event = Fresh.event("Midsummer");
        event.setZone("UTC");
        event.getSites().add(site);
        List.of("A", "B", "C", "Zoe", "Q0AAR", "Q3DUN").forEach(name -> operator(event, name));
        for (String paper : papers.isBlank() ? new String[0] : papers.split(";")) {
            String[] words = paper.strip().split("\\s+");
            if (words[0].equals("visit")) {
                Visit visit = Fresh.visit();
                visit.setDate(day(words[1]));
                site.getVisits().add(visit);
            } else {
                site.getReviews().add(review(words, site));
            }
        }
        return site;
    }

    static Operator operator(Event event, String name) {
        Operator operator = Fresh.operator();
        operator.setName(name);
        event.getOperators().add(operator);
        return operator;
    }

    private static Review review(String[] words, Site site) {
        Review review = Fresh.review();
        review.setDate(day(words[1]));
        review.setSecond("Zoe");
        review.setSecondAt(Instant.parse("2031-06-01T18:00:00Z"));
        for (int i = 2; i < words.length; i++) {
            switch (words[i]) {
                case "by" -> review.setReviewer(words[++i]);
                case "alone" -> review.setSecond(null);
                case "until" -> review.setExpires(day(words[++i]));
                case "of" -> {
                    LocalDate reviewed = day(words[++i]);
                    review.setVisit(site.getVisits().stream().filter(visit -> reviewed.equals(visit.getDate()))
                            .findFirst().orElseThrow());
                }
                case "refuse" -> review.setVerdict(Verdict.DO_NOT_USE);
                case "if" -> {
                    review.setVerdict(Verdict.ON_CONDITIONS);
                    review.setConditions(words[++i]);
                }
                default -> throw new IllegalArgumentException(words[i]);
            }
        }
        return review;
    }

    static Hazard hazard(HazardKind kind, String description, double distanceM, String measure) {
        Hazard hazard = StraddleFactory.eINSTANCE.createHazard();
        hazard.setKind(kind);
        hazard.setDescription(description);
        hazard.setDistanceM(distanceM);
        hazard.setMeasure(measure);
        return hazard;
    }

    static OverheadLine wires(double distanceM, double kilovolts, boolean fromOwner) {
        OverheadLine wires = StraddleFactory.eINSTANCE.createOverheadLine();
        wires.setDistanceM(distanceM);
        wires.setVoltageKv(kilovolts);
        wires.setVoltageFromOwner(fromOwner);
        return wires;
    }

    static Policies policies() {
        return StraddleFactory.eINSTANCE.createPolicies();
    }

    /** "valid until 2031-08-01 by A", "expired since …", "missing", … on a day. */
    static String state(String papers, String monthDay) {
        ReviewState state = SafetyNotes.of(site(papers), day(monthDay), policies()).state();
        if (state instanceof ReviewState.Valid valid) {
            return valid.word() + " until " + valid.until().toString().substring(5) + " by " + valid.reviewer();
        }
        if (state instanceof ReviewState.Expired expired) {
            return "expired since " + expired.since().toString().substring(5);
        }
        return state.word();
    }
}
