package org.straddle.plan.event;

import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.Licences;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.words.Catalogue;

/**
 * What teams cannot be planned for because of who is in them.
 *
 * @param outlook empty when nothing is asked of crews
 */
record CrewLimits(Optional<Outlook> outlook) {

    private static final Catalogue TEXTS = Catalogue.of(CrewLimits.class);

    static final CrewLimits NONE = new CrewLimits(Optional.empty());

    static CrewLimits of(Outlook outlook) {
        return new CrewLimits(Optional.of(outlook));
    }

    /** Whether a team may make no stop at all. */
    boolean forbidStops(Team team) {
        return outlook.filter(known -> Crew.isAlone(team, known.policies())).isPresent();
    }

    /** Whether a team may not work a bird from a site, whenever that is. */
    boolean forbidTurns(Team team, Site site, Bird bird) {
        return outlook.filter(known -> !Licences.broken(known, team, site, bird).isEmpty()).isPresent();
    }

    /** Why a team may not work a bird from a site; empty when it may. */
    Optional<String> why(Team team, Site site, Bird bird) {
        if (forbidStops(team)) {
            return Optional.of(TEXTS.text("crew.alone", "team", Naming.number(team)));
        }
        return outlook.flatMap(known -> Licences.broken(known, team, site, bird).stream().findFirst())
                .map(rule -> rule == PlanRule.LICENCE_BAND ? TEXTS.text("crew.noLicence", "team", Naming.number(team),
                        "bird", Naming.name(bird)) : TEXTS.text("crew.noLicenceThere", "team", Naming.number(team),
                        "bird", Naming.name(bird), "site", Naming.name(site)));
    }
}
