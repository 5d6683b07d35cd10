package org.straddle.check.rules;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.straddle.check.Finding;
import org.straddle.check.Statement;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.SafetyNotes;

/**
 * A site on the first day of the plan on which something is so, with what safety knows of it then.
 *
 * @param stay  the stop that begins on the day
 * @param notes what is known of the site on the day
 */
public record UsedSite(Site site, Stay stay, LocalDate day, SafetyNotes notes) {

    public static UsedSite of(Stay stay, Inspection in) {
        LocalDate day = in.times().date(stay.window().start());
        return new UsedSite(stay.site(), stay, day, SafetyNotes.of(stay.site(), day, in.event().getPolicies()));
    }

    /** The first use of a site that has something to tell. */
    public static Optional<UsedSite> first(Site site, Inspection in, Predicate<UsedSite> telling) {
        return in.uses(site).stream().filter(telling).findFirst();
    }

    private static List<Object> judgement(Review review) {
        return Arrays.asList(review.getReviewer(), review.getSecond(), review.getDate(), review.getExpires(), review.getVerdict(),
                review.getConditions());
    }

    /** What may hurt somebody there, as the visit has it. */
    private static List<Object> dangers(Visit visit) {
        return Arrays.asList(visit.getId(), visit.getRoadSpeedKmh(), visit.getMastLimitM(),
                visit.getHazards().stream().map(hazard -> Arrays.asList(hazard.getKind(), hazard.getDescription(),
                        hazard.getDistanceM(), hazard.getMeasure())).toList(),
                visit.getOverheadLines().stream().map(line -> Arrays.asList(line.getDistanceM(), line.getHeightM(),
                        line.getVoltageKv(), line.isVoltageFromOwner(), line.getNote())).toList());
    }

    public Finding finding(NamedRule rule, Statement says) {
        return Finding.of(rule, says, site)
                .restingOn(notes.visit().map(UsedSite::dangers), notes.review().map(Review::getId),
                        notes.review().map(UsedSite::judgement))
                .at(stay.window().start());
    }
}
