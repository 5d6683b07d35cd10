package org.straddle.worth;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.BirdReport;
import org.straddle.model.BirdState;
import org.straddle.model.ReportKind;

/** Why one believes that a bird works, or does not: the hardest first. */
public enum BirdBelief {
    /** Written down as not working. */
    NOT_WORKING,
    /** The newest report says that nothing was heard. */
    NOT_HEARD,
    /** Written down as working now and then. */
    INTERMITTENT,
    /** Somebody made a two-way contact lately. */
    WORKED_LATELY,
    /** It was heard, and nobody made a contact. */
    HEARD_ONLY,
    /** Written down as working. */
    WORKING,
    /** Nobody knows. */
    UNKNOWN;

    /** What state and reports amount to. @param at when it is to be worked; later reports do not count */
    public static BirdBelief of(Bird bird, Instant at, WorthFigures figures) {
        Optional<BirdReport> newest = bird.getReports().stream().filter(report -> counts(report, at))
                .max(Comparator.comparing(BirdReport::getAt));
        if (bird.getState() == BirdState.NOT_WORKING) {
            return NOT_WORKING;
        }
        if (newest.filter(report -> report.getKind() == ReportKind.NOT_HEARD).isPresent()) {
            return NOT_HEARD;
        }
        if (bird.getState() == BirdState.INTERMITTENT) {
            return INTERMITTENT;
        }
        Optional<Instant> worked = bird.getReports().stream().filter(report -> counts(report, at)
                && report.getKind() == ReportKind.TWO_WAY_CONTACT).map(BirdReport::getAt).max(Comparator.naturalOrder());
        if (worked.isPresent()) {
            return !worked.get().isBefore(at.minus(figures.lately())) ? WORKED_LATELY
                    : bird.getState() == BirdState.WORKING ? WORKING : UNKNOWN;
        }
        return newest.isPresent() ? HEARD_ONLY : bird.getState() == BirdState.WORKING ? WORKING : UNKNOWN;
    }

    private static boolean counts(BirdReport report, Instant at) {
        return report.getAt() != null && !report.getAt().isAfter(at);
    }

    /** The chance that the bird works, 0 to 1. */
    public double chance(WorthFigures figures) {
        return switch (this) {
            case NOT_WORKING -> 0;
            case NOT_HEARD -> figures.notHeard();
            case INTERMITTENT -> figures.intermittent();
            case WORKED_LATELY -> figures.workedLately();
            case HEARD_ONLY -> figures.heardOnly();
            case WORKING -> figures.working();
            case UNKNOWN -> figures.unknown();
        };
    }
}
