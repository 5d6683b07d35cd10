package org.straddle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Hazard;
import org.straddle.model.Policies;
import org.straddle.model.RiskLevel;
import org.straddle.model.RiskProbability;
import org.straddle.model.Visit;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** Whether the hazards of a visit are dealt with: each has a measure, is rated, and leaves no more than the event takes. */
final class HazardRating {

    private static final Catalogue TEXTS = Catalogue.of(HazardRating.class);

    private HazardRating() {
    }

    /** What is still wrong, a sentence each. */
    static List<String> trouble(Visit visit, Policies policies) {
        RiskMatrix matrix;
        try {
            matrix = RiskMatrix.of(policies);
        } catch (IllegalArgumentException unreadable) {
            return List.of(unreadable.getMessage());
        }
        List<String> trouble = new ArrayList<>();
        for (Hazard hazard : visit.getHazards()) {
            trouble(hazard, matrix, policies.getHighestRisk()).ifPresent(trouble::add);
        }
        return trouble;
    }

    private static Optional<String> trouble(Hazard hazard, RiskMatrix matrix, RiskLevel most) {
        String name = name(hazard);
        if (hazard.getProbabilityLeft() == RiskProbability.ELIMINATED) {
            return Optional.empty();
        }
        if (Written.or(hazard.getMeasure(), "").isEmpty()) {
            return Optional.of(TEXTS.text("hazardRating.noMeasure", "hazard", name));
        }
        Optional<RiskLevel> left = matrix.level(hazard.getSeverityLeft(), hazard.getProbabilityLeft());
        if (left.isEmpty()) {
            return Optional.of(TEXTS.text("hazardRating.notRated", "hazard", name));
        }
        return left.filter(level -> level.compareTo(most) > 0).map(level -> TEXTS.text("hazardRating.tooMuch", "hazard", name, "left",
                Naming.of(level), "most", Naming.of(most)));
    }

    private static String name(Hazard hazard) {
        String what = Written.or(hazard.getDescription(), "");
        return what.isEmpty() ? TEXTS.text("hazardRating.kind", "kind", Naming.of(hazard.getKind()))
                : TEXTS.text("hazardRating.named", "description", what);
    }
}
