package org.straddle.safety;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

import org.straddle.model.Visit;
import org.straddle.outlook.PolicyFigures;

/** Whether the newest visit of a site can be relied on on a day. */
public enum VisitState {
    /** Nobody visited the site. */
    MISSING,
    /** It says itself until when it holds, and that is over. */
    EXPIRED,
    /** Nobody wrote down when it was. */
    UNDATED,
    /** It does not say until when it holds, and is older than the event's policy allows: roads, fences and woods change. */
    OLD,
    HOLDS;

    static VisitState of(Optional<Visit> newest, LocalDate day, PolicyFigures policies) {
        if (newest.isEmpty()) {
            return MISSING;
        }
        Visit visit = newest.get();
        if (visit.getExpires() != null && visit.getExpires().isBefore(day)) {
            return EXPIRED;
        } else if (visit.getDate() == null) {
            return UNDATED;
        }
        return visit.getExpires() == null && ChronoUnit.DAYS.between(visit.getDate(), day) > policies.visitAgeLimitDays()
                ? OLD : HOLDS;
    }
}
