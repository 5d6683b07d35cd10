package org.straddle.daysheet.fits;

import java.util.List;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.outlook.itinerary.Licences;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.things.Band;
import org.straddle.words.Catalogue;

/** What a team cannot do because of who is in it. */
final class CrewLimits {

    private static final Catalogue TEXTS = Catalogue.of(CrewLimits.class);

    private CrewLimits() {
    }

    /** Of every stop. */
    static Optional<Obstacle> onStops(Outlook outlook, Team team) {
        return Crew.isAlone(team, outlook.policies())
                ? Optional.of(new Obstacle(PlanRule.LONE_OPERATOR, TEXTS.text("crew.alone", "team", Say.team(team)))) : Optional.empty();
    }

    /** Of every turn on a bird from a site. */
    static List<Obstacle> onTurns(Outlook outlook, Team team, Site site, Bird bird) {
        return Licences.broken(outlook, team, site, bird).stream().map(rule -> new Obstacle(rule, rule == PlanRule.LICENCE_BAND
                ? TEXTS.text("crew.band", "team", Say.team(team), "band", band(bird))
                : TEXTS.text("crew.place", "team", Say.team(team), "band", band(bird), "site", Naming.name(site)))).toList();
    }

    private static String band(Bird bird) {
        return Band.ofUplink(bird).orElseThrow().label();
    }
}
