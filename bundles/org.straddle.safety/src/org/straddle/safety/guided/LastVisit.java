package org.straddle.safety.guided;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Hazard;
import org.straddle.model.OverheadLine;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Visit;

/** What the last visit answers beforehand. Whether a hazard is still there, somebody says anew. */
final class LastVisit {

    private LastVisit() {
    }

    static Map<String, String> answers(Optional<Visit> visit, List<HazardSubject> hazards) {
        Map<String, String> answers = new HashMap<>();
        visit.ifPresent(seen -> {
            Questions.PLACE.forEach((id, feature) -> put(answers, id, text(seen.eGet(feature))));
            nearest(seen).ifPresent(wires -> wires(answers, wires));
        });
        hazards.forEach(hazard -> hazard(answers, hazard));
        return answers;
    }

    static Optional<OverheadLine> nearest(Visit visit) {
        return visit.getOverheadLines().stream().min(Comparator.comparingDouble(OverheadLine::getDistanceM));
    }

    private static void wires(Map<String, String> answers, OverheadLine wires) {
        answers.put("wires", Questions.YES);
        put(answers, "wires.distance", text(wires.getDistanceM()));
        put(answers, "wires.height", text(wires.getHeightM()));
        put(answers, "wires.kv", text(wires.getVoltageKv()));
        answers.put("wires.owner", wires.isVoltageFromOwner() ? Questions.YES : Questions.NO);
    }

    private static void hazard(Map<String, String> answers, HazardSubject hazard) {
        put(answers, hazard.id() + ".what", hazard.description());
        put(answers, hazard.id() + ".distance", text(hazard.distanceM()));
        hazard.seen().ifPresent(seen -> {
            put(answers, hazard.id() + ".measure", text(seen.getMeasure()));
            put(answers, hazard.id() + ".owner", text(seen.getOwner()));
            rated(answers, hazard.id(), seen);
        });
    }

    private static void rated(Map<String, String> answers, String id, Hazard seen) {
        put(answers, id + ".severity", seen.getSeverity() == RiskSeverity.NOT_RATED ? "" : seen.getSeverity().name());
        put(answers, id + ".probability", seen.getProbability() == RiskProbability.NOT_RATED ? "" : seen.getProbability().name());
        put(answers, id + ".severityLeft", seen.getSeverityLeft() == RiskSeverity.NOT_RATED ? "" : seen.getSeverityLeft().name());
        put(answers, id + ".probabilityLeft", seen.getProbabilityLeft() == RiskProbability.NOT_RATED ? "" : seen.getProbabilityLeft().name());
    }

    private static void put(Map<String, String> answers, String id, String text) {
        if (!text.isBlank()) {
            answers.put(id, text.strip());
        }
    }

    /** As somebody would type it; what nobody measured is 0 in a file, and here nothing. */
    private static String text(Object value) {
        if (value instanceof Double number) {
            return number == 0 ? "" : number == Math.rint(number) ? Long.toString(number.longValue()) : number.toString();
        }
        return value instanceof LocalDate || value instanceof String ? value.toString() : "";
    }
}
