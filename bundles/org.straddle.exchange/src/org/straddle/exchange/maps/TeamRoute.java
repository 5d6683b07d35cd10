package org.straddle.exchange.maps;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

import org.straddle.exchange.Waypoint;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.words.Catalogue;

/**
 * The way of a team through its days, for a receiver in the car: each day's base, the sites of its stops in the order
 * of their times, and the base where the day ends.
 */
public final class TeamRoute {

    private static final Catalogue TEXTS = Catalogue.of(TeamRoute.class);

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM HH:mm'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private TeamRoute() {
    }

    /**
     * The places in order; empty when the plan has no stops for the team. Stops without site or time are left out.
     *
     * @throws IllegalArgumentException naming a site or base that is nowhere on Earth
     */
    public static List<Waypoint> of(Event event, Team team) {
        List<Stop> stops = event.getPlan() == null ? List.of()
                : event.getPlan().getStops().stream().filter(stop -> stop.getTeam() == team && stop.getSite() != null
                        && stop.getArrival() != null && stop.getDeparture() != null).sorted(Comparator.comparing(Stop::getArrival)).toList();
        List<Waypoint> way = new ArrayList<>();
        List<TeamDay> days = team.getDays().stream().filter(day -> day.getFrom() != null && day.getUntil() != null)
                .sorted(Comparator.comparing(TeamDay::getFrom)).toList();
        List<Stop> left = new ArrayList<>(stops);
        for (TeamDay day : days) {
            List<Stop> today = left.stream().filter(stop -> stop.getArrival().isBefore(day.getUntil())).toList();
            left.removeAll(today);
            if (!today.isEmpty()) {
                addBase(way, day.getStart());
                today.forEach(stop -> way.add(waypoint(stop)));
                addBase(way, day.getEnd());
            }
        }
        left.forEach(stop -> way.add(waypoint(stop)));
        return way;
    }

    private static Waypoint waypoint(Stop stop) {
        Waypoint site = Waypoint.of(stop.getSite());
        return new Waypoint(site.position(), site.altitudeM(), site.name(),
                TEXTS.text("teamRoute.to", "arrival", TIME.format(stop.getArrival()),
                        "departure", TIME.format(stop.getDeparture()), "description", site.description()),
                        "stop", site.more());
    }

    private static void addBase(List<Waypoint> way, Base base) {
        if (base != null) {
            String name = Objects.toString(base.getName(), "");
            try {
                way.add(new Waypoint(new GeoPosition(base.getLatitudeDeg(), base.getLongitudeDeg()), OptionalDouble.empty(), name, "", "base",
                        Map.of()));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(TEXTS.text("teamRoute.baseHasPosition", "name", name,
                        "reason", e.getMessage()), e);
            }
        }
    }
}
