package org.straddle.safety.guided;

import org.straddle.model.HazardKind;
import org.straddle.model.Visit;

/**
 * A hazard that facts of the event suggest. Somebody accepts it or says why it is none.
 *
 * @param what may hurt, in our words
 * @param because the facts behind it; it comes back when they change
 * @param distanceM from the mark, metres; 0 where that is not known or does not apply
 * @param ofForecast does it come and go with the forecast?
 */
public record HazardProposal(HazardKind kind, String what, String because, double distanceM, boolean ofForecast) {

    /** Did the visit note such a hazard, or somebody decline it on the same facts? */
    boolean isAnswered(Visit visit) {
        return visit.getHazards().stream().anyMatch(hazard -> hazard.getKind() == kind
                && (kind != HazardKind.OTHER || what.equals(hazard.getDescription())))
                || visit.getDeclinedHazards().stream().anyMatch(declined -> declined.getKind() == kind && because.equals(declined.getBecause())
                        && declined.getReason() != null && !declined.getReason().isBlank());
    }
}
