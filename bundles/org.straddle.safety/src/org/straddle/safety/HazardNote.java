package org.straddle.safety;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * One hazard and what to do about it.
 *
 * @param distanceM distance from the mark, metres; 0 when it does not apply
 * @param measure what the visit says the team does about it; empty when nothing was written
 * @param cautions the usual cautions for its kind, with figures worked out from the visit where it has any
 */
public record HazardNote(HazardKind kind, String description, double distanceM, String measure,
        List<String> cautions) {

    private static final Catalogue TEXTS = Catalogue.of(HazardNote.class);

    public HazardNote {
        cautions = List.copyOf(cautions);
    }

    static HazardNote of(Hazard hazard, Visit visit, Occasion occasion) {
        return new HazardNote(hazard.getKind(), Written.or(hazard.getDescription(), ""), hazard.getDistanceM(),
                Written.or(hazard.getMeasure(), ""), Cautions.of(hazard, visit, occasion));
    }

    /** All overhead wires of a visit in one note, so that one figure stands on the sheet; empty where it saw none. */
    static Optional<HazardNote> ofWires(Site site, Visit visit, Occasion occasion) {
        List<WireSighting> seen = WireSighting.of(visit);
        Optional<MastLimit> limit = MastLimit.of(site, visit, occasion.spanM());
        if (seen.isEmpty() && limit.isEmpty()) {
            return Optional.empty();
        }
        List<Hazard> named = WireSighting.hazards(visit);
        double nearest = seen.stream().mapToDouble(WireSighting::distanceM).min().orElse(0);
        String measures = named.stream().map(hazard -> Written.or(hazard.getMeasure(), ""))
                .filter(measure -> !measure.isEmpty()).distinct().collect(Collectors.joining("; "));
        String description = Stream.concat(named.stream().map(hazard -> Written.or(hazard.getDescription(), "")),
                seen.stream().map(wires -> (wires.distanceM() > nearest ? TEXTS.text("hazardNote.away",
                        "distanceM", FigureText.inCurrent().atMost(1, wires.distanceM())) : "")
                        + wires.words())).filter(words -> !words.isEmpty()).distinct().collect(Collectors.joining("; "));
        return Optional.of(new HazardNote(HazardKind.POWER_LINE, description, nearest, measures,
                Cautions.wires(seen, limit, measures)));
    }

    /** With the cautions that were not said yet; they count as said from now on. */
    HazardNote without(Set<String> said) {
        return new HazardNote(kind, description, distanceM, measure, cautions.stream().filter(said::add).toList());
    }

    /** What kind of hazard it is, in words. */
    public String kindWords() {
        return Naming.of(kind);
    }

    /** The hazard in a line: "overhead wires, 12 m away: low wire over the gate". */
    public String title() {
        return kindWords() + (distanceM > 0 ? TEXTS.text("hazardNote.away", "distanceM", FigureText.inCurrent().atMost(1, distanceM)) : "")
                + (description.isEmpty() ? "" : ": " + description);
    }

    /** The measure of the visit, or a sentence that says there is none. */
    public String measureText() {
        return measure.isEmpty() ? TEXTS.text("hazardNote.visitNamesMeasure") : measure;
    }
}
