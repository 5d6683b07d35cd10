package org.straddle.check.gate;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.straddle.check.Finding;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;

/**
 * Picks the findings that a team has to know: about itself, its people, kits, stops and turns; and about the sites it
 * goes to, unless they are about what another team does there.
 */
public final class FindingsOfTeam {

    private final Set<Identified> own = new HashSet<>();
    private final Set<Site> sites = new HashSet<>();

    private FindingsOfTeam(Team team, List<Stop> stops) {
        own.add(team);
        own.addAll(team.getOperators());
        team.getKits().forEach(kit -> {
            own.add(kit);
            own.addAll(kit.getItems());
        });
        stops.forEach(stop -> {
            own.add(stop);
            own.addAll(stop.getTurns());
            if (stop.getSite() != null) {
                sites.add(stop.getSite());
            }
        });
    }

    /**
     * The open ones; what the coordinator accepted is settled. Order is kept.
     *
     * @param stops those that count: all of the team, or those of one day
     */
    public static List<Finding> of(Team team, List<Stop> stops, List<Finding> findings) {
        FindingsOfTeam picker = new FindingsOfTeam(team, stops);
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
