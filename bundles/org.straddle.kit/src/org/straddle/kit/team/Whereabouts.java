package org.straddle.kit.team;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;

/**
 * Where a team is by its plan: at a site, at a base, or on the road to one; who is on the road is taken to be where the
 * drive ends, because nobody knows how far it has come.
 */
public final class Whereabouts {

    private final Team team;
    private final Outlook outlook;
    private final List<Stay> stays;

    private Whereabouts(Team team, Outlook outlook, Itinerary itinerary) {
        this.team = team;
        this.outlook = outlook;
        this.stays = itinerary.of(team);
    }

    public static Whereabouts of(Team team, Outlook outlook, Itinerary itinerary) {
        return new Whereabouts(team, outlook, itinerary);
    }

    /** The site or base at which the team is or which it reaches next; empty while it is not out. */
    public Optional<Identified> at(Instant instant) {
        Optional<TeamDay> day = team.getDays().stream().filter(out -> out.getFrom() != null && out.getUntil() != null
                && !instant.isBefore(out.getFrom()) && instant.isBefore(out.getUntil())).findFirst();
        Optional<Stay> next = stays.stream().filter(stay -> instant.isBefore(stay.window().end()))
                .filter(stay -> day.isEmpty() ? !instant.isBefore(stay.window().start())
                        : stay.window().start().isBefore(day.get().getUntil())).findFirst();
        Optional<Identified> place = next.map(Stay::site).filter(outlook::isPlaced).map(site -> (Identified) site);
        return place.isPresent() || day.isEmpty() ? place : base(day.get());
    }

    private Optional<Identified> base(TeamDay day) {
        Base end = day.getEnd() != null ? day.getEnd() : day.getStart();
        return Optional.ofNullable(end).filter(base -> !base.eIsProxy() && outlook.isPlaced(base)).map(base -> (Identified) base);
    }
}
