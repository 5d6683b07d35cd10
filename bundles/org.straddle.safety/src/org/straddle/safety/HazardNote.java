package org.straddle.safety;

import java.util.List;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Survey;

/**
 * One hazard and what to do about it.
 *
 * @param distanceM distance from the mark, metres; 0 when it does not apply
 * @param measure what the surveyor says the team does about it; empty when nothing was written
 * @param cautions the usual cautions for its kind, with figures worked out from the survey where it has any
 */
public record HazardNote(HazardKind kind, String description, double distanceM, String measure,
        List<String> cautions) {

    public HazardNote {
        cautions = List.copyOf(cautions);
    }

    static HazardNote of(Hazard hazard, Survey survey) {
        return new HazardNote(hazard.getKind(), Words.orElse(hazard.getDescription(), ""), hazard.getDistanceM(),
                Words.orElse(hazard.getMeasure(), ""), Cautions.of(hazard, survey));
    }

    /** The hazard in a line: "power line, 12 m away: low wire over the gate". */
    public String title() {
        return kind.getLiteral() + (distanceM > 0 ? ", " + Words.number(distanceM) + " m away" : "")
                + (description.isEmpty() ? "" : ": " + description);
    }

    /** The surveyor's measure, or a sentence that says there is none. */
    public String measureText() {
        return measure.isEmpty() ? "The survey names no measure: agree on one before you set up." : measure;
    }
}
