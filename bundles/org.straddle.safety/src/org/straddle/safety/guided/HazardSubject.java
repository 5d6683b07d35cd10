package org.straddle.safety.guided;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Visit;

/**
 * A hazard that is asked about: the last visit saw it, facts propose it, or nothing is known of its kind yet.
 *
 * @param id begins the ids of its questions
 * @param seen as the last visit wrote it down
 */
record HazardSubject(String id, HazardKind kind, Optional<Hazard> seen, Optional<HazardProposal> proposed) {

    static List<HazardSubject> of(Optional<Visit> visit, List<HazardProposal> proposals) {
        List<HazardSubject> all = new ArrayList<>();
        Set<HazardKind> unknown = EnumSet.allOf(HazardKind.class);
        visit.ifPresent(noted -> noted.getHazards().forEach(hazard -> all.add(
                new HazardSubject("hazard" + all.size(), hazard.getKind(), Optional.of(hazard), Optional.empty()))));
        proposals.stream().filter(proposal -> visit.filter(proposal::isAnswered).isEmpty()).forEach(proposal -> all.add(
                new HazardSubject("hazard" + all.size(), proposal.kind(), Optional.empty(), Optional.of(proposal))));
        all.forEach(subject -> unknown.remove(subject.kind()));
        unknown.forEach(kind -> all.add(new HazardSubject("hazard" + all.size(), kind, Optional.empty(), Optional.empty())));
        return List.copyOf(all);
    }

    String description() {
        return seen.map(Hazard::getDescription).or(() -> proposed.map(HazardProposal::what)).orElse("");
    }

    double distanceM() {
        return seen.map(Hazard::getDistanceM).or(() -> proposed.map(HazardProposal::distanceM)).orElse(0.0);
    }

    /** Was there a reason to think of it? Then a no needs a word too. */
    boolean isKnown() {
        return seen.isPresent() || proposed.isPresent();
    }
}
