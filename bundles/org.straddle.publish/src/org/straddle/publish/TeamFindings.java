package org.straddle.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.straddle.check.Finding;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;

/** Picks the findings that a team has to know: about itself, its people, kits, stops and turns, and the sites it goes to. */
final class TeamFindings {

    private TeamFindings() {
    }

    /** The open ones; what the coordinator accepted is settled. Order is kept. */
    static List<Finding> of(Outlook outlook, Team team, List<Finding> findings) {
        Set<String> ids = new HashSet<>();
        ids.add(team.getId());
        team.getOperators().forEach(operator -> ids.add(operator.getId()));
        team.getKits().forEach(kit -> {
            ids.add(kit.getId());
            kit.getItems().forEach(item -> ids.add(item.getId()));
        });
        Scheduled.stops(outlook.event(), team).forEach(stop -> {
            ids.add(stop.getId());
            ids.add(stop.getSite().getId());
            stop.getTurns().forEach(turn -> ids.add(turn.getId()));
        });
        return findings.stream().filter(finding -> finding.accepted().isEmpty())
                .filter(finding -> finding.objects().stream().anyMatch(object -> ids.contains(object.getId())
                        || isWithin(object.eContainer(), ids)))
                .toList();
    }

    private static boolean isWithin(EObject container, Set<String> ids) {
        return container instanceof org.straddle.model.Identified owner && ids.contains(owner.getId());
    }
}
