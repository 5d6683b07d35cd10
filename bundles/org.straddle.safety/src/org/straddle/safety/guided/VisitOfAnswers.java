package org.straddle.safety.guided;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.DeclinedHazard;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.OverheadLine;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;

/** The visit that somebody's answers amount to. Mark, horizon and photos are not asked for, so it has none. */
final class VisitOfAnswers {

    private final GuidedReview review;

    VisitOfAnswers(GuidedReview review) {
        this.review = review;
    }

    Visit visit() {
        Visit visit = Fresh.visit();
        visit.setVisitor(answer("name"));
        visit.setDate(review.day());
        Questions.PLACE.forEach((id, feature) -> set(visit, feature, answer(id)));
        wires(visit);
        review.hazards().forEach(hazard -> hazard(visit, hazard));
        return visit;
    }

    private String answer(String id) {
        return review.answers().getOrDefault(id, "");
    }

    private double number(String id) {
        return answer(id).isEmpty() ? 0 : Double.parseDouble(answer(id));
    }

    private static void set(Visit visit, EAttribute feature, String answer) {
        Class<?> type = feature.getEAttributeType().getInstanceClass();
        if (!answer.isEmpty()) {
            visit.eSet(feature, type == double.class ? Double.valueOf(answer) : type == LocalDate.class ? LocalDate.parse(answer) : answer);
        }
    }

    /** The nearest as answered; the others of the last visit stay as they were seen. */
    private void wires(Visit visit) {
        if (!answer("wires").equals(Questions.YES)) {
            return;
        }
        OverheadLine nearest = StraddleFactory.eINSTANCE.createOverheadLine();
        nearest.setDistanceM(number("wires.distance"));
        nearest.setHeightM(number("wires.height"));
        nearest.setVoltageKv(number("wires.kv"));
        nearest.setVoltageFromOwner(nearest.getVoltageKv() > 0 && answer("wires.owner").equals(Questions.YES));
        visit.getOverheadLines().add(nearest);
        review.lastVisit().ifPresent(last -> LastVisit.nearest(last).ifPresent(known -> last.getOverheadLines().stream()
                .filter(wires -> wires != known).forEach(wires -> visit.getOverheadLines().add(EcoreUtil.copy(wires)))));
    }

    private void hazard(Visit visit, HazardSubject subject) {
        String here = answer(subject.id() + ".here");
        if (here.equals(Questions.YES)) {
            visit.getHazards().add(hazard(subject));
        } else if (here.equals(Questions.NO) && subject.isKnown()) {
            DeclinedHazard declined = StraddleFactory.eINSTANCE.createDeclinedHazard();
            declined.setKind(subject.kind());
            declined.setBecause(subject.proposed().map(HazardProposal::because).orElse(subject.description()));
            declined.setReason(answer(subject.id() + ".reason"));
            declined.setBy(answer("name"));
            visit.getDeclinedHazards().add(declined);
        }
    }

    private Hazard hazard(HazardSubject subject) {
        Hazard hazard = StraddleFactory.eINSTANCE.createHazard();
        hazard.setKind(subject.kind());
        hazard.setDescription(answer(subject.id() + ".what"));
        hazard.setDistanceM(number(subject.id() + ".distance"));
        hazard.setMeasure(answer(subject.id() + ".measure"));
        hazard.setOwner(answer(subject.id() + ".owner"));
        hazard.setSeverity(severity(subject.id() + ".severity"));
        hazard.setProbability(probability(subject.id() + ".probability"));
        hazard.setSeverityLeft(severity(subject.id() + ".severityLeft"));
        hazard.setProbabilityLeft(probability(subject.id() + ".probabilityLeft"));
        return hazard;
    }

    private RiskSeverity severity(String id) {
        return answer(id).isEmpty() ? RiskSeverity.NOT_RATED : RiskSeverity.valueOf(answer(id));
    }

    private RiskProbability probability(String id) {
        return answer(id).isEmpty() ? RiskProbability.NOT_RATED : RiskProbability.valueOf(answer(id));
    }
}
