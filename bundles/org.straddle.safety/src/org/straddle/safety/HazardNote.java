package org.straddle.safety;

import java.util.ArrayList;
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

    /** A line overhead that the survey measured: its height and voltage stand in its description. */
    static HazardNote of(org.straddle.model.OverheadLine line) {
        List<String> known = new ArrayList<>();
        known.add(line.getHeightM() > 0 ? "lowest wire about " + Words.number(line.getHeightM()) + " m up" : "height not known");
        known.add(line.getVoltageKv() > 0 ? Words.number(line.getVoltageKv()) + " kV" : "voltage not known");
        String note = Words.orElse(line.getNote(), "");
        if (!note.isEmpty()) {
            known.add(note);
        }
        return new HazardNote(HazardKind.POWER_LINE, String.join(", ", known), line.getDistanceM(), "", Cautions.of(line));
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
