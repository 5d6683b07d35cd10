package org.straddle.publish;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.straddle.check.Finding;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

/**
 * Picks the findings that a team has to know: about itself, its people, kits, stops and turns; and about the sites it
 * goes to, unless they are about what another team does there.
 */
final class TeamFindings {

    private final Set<Identified> own = new HashSet<>();
    private final Set<Site> sites = new HashSet<>();

    private TeamFindings(Outlook outlook, Team team) {
        own.add(team);
        own.addAll(team.getOperators());
        team.getKits().forEach(kit -> {
            own.add(kit);
            own.addAll(kit.getItems());
        });
        Scheduled.stops(outlook.event(), team).forEach(stop -> {
            own.add(stop);
            own.addAll(stop.getTurns());
            sites.add(stop.getSite());
        });
    }

    /** The open ones; what the coordinator accepted is settled. Order is kept. */
    static List<Finding> of(Outlook outlook, Team team, List<Finding> findings) {
        TeamFindings picker = new TeamFindings(outlook, team);
        return findings.stream().filter(finding -> finding.accepted().isEmpty()).filter(picker::touches).toList();
    }

    private boolean touches(Finding finding) {
        List<Identified> objects = finding.objects();
        boolean plansSomething = objects.stream()
                .anyMatch(object -> object instanceof Team || object instanceof Stop || object instanceof Turn);
        return objects.stream().anyMatch(own::contains)
                || !plansSomething && objects.stream().anyMatch(sites::contains);
    }
}
