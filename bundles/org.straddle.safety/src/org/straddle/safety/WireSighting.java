package org.straddle.safety;

import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.OverheadLine;
import org.straddle.model.Visit;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * Overhead wires as a visit saw them.
 *
 * @param distanceM from the mark along the ground, metres; 0 when nobody measured it
 * @param heightM of the lowest wire, metres; 0 when nobody estimated it
 */
record WireSighting(double distanceM, double heightM, WireVoltage voltage, String note) {

    private static final Catalogue TEXTS = Catalogue.of(WireSighting.class);

    /**
     * All wires of a visit: those in its table, and those that it names as a hazard. A hazard with the distance of
     * wires in the table, or with none beside such wires, is taken for the same.
     */
    static List<WireSighting> of(Visit visit) {
        List<WireSighting> seen = new ArrayList<>();
        for (OverheadLine wires : visit.getOverheadLines()) {
            seen.add(new WireSighting(known(wires.getDistanceM()), known(wires.getHeightM()), WireVoltage.of(wires),
                    Written.or(wires.getNote(), "")));
        }
        for (Hazard hazard : hazards(visit)) {
            double distanceM = known(hazard.getDistanceM());
            if (seen.isEmpty() || distanceM > 0 && seen.stream().noneMatch(wires -> wires.distanceM == distanceM)) {
                seen.add(new WireSighting(distanceM, 0, WireVoltage.unknown(), ""));
            }
        }
        return seen;
    }

    static List<Hazard> hazards(Visit visit) {
        return visit.getHazards().stream().filter(hazard -> hazard.getKind() == HazardKind.POWER_LINE).toList();
    }

    /** A visit leaves at 0 what nobody measured, and a file may hold anything. */
    private static double known(double measured) {
        return measured > 0 && Double.isFinite(measured) ? measured : 0;
    }

    /** Such as "lowest wire about 8 m up, voltage not known, along the track". */
    String words() {
        return (heightM > 0 ? TEXTS.text("hazardNote.lowestWireAbout", "heightM", FigureText.inCurrent().atMost(1, heightM))
                : TEXTS.text("hazardNote.heightNotKnown")) + ", "
                + voltage.words() + (note.isEmpty() ? "" : ", " + note);
    }
}
