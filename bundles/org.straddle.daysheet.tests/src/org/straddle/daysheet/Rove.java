package org.straddle.daysheet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.LightMemory;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

/**
 * An event in a short notation. Times are those of 20 June 2031 UTC, {@code "09:30-11"}; a leading {@code "+1 "} means
 * the day after. Roads are straight and driven at 60 km/h, without breaks.
 */
public final class Rove {

    private final Event event = Fresh.event("Rove");

    public Rove(String zone) {
        event.setZone(zone);
        event.getPolicies().setDetourFactor(1);
        event.getPolicies().setRoadSpeedKmh(60);
        event.getPolicies().setBreakMinutes(0);
    }

    public Event event() {
        return event;
    }

    /** A team that is out from a base at 64° N 21° W, once for each of the times. */
    public Rove team(int number, String... times) {
        Team team = Fresh.team();
        team.setNumber(number);
        team.setName("Team " + number);
        Base base = Fresh.base();
        base.setName("Base " + number);
        base.setLatitudeDeg(64);
        base.setLongitudeDeg(-21);
        event.getBases().add(base);
        for (String time : times) {
            TeamDay day = Fresh.teamDay(from(time), until(time), base, base);
            team.getDays().add(day);
        }
        event.getTeams().add(team);
        return this;
    }

    /** A stop of a team, 0 for none, at a site that is made when it is first named. */
    public Stop stop(int team, String siteName, double latitudeDeg, double longitudeDeg, String time) {
        Stop stop = Fresh.stop(event.getTeams().stream().filter(t -> t.getNumber() == team).findFirst().orElse(null),
                site(siteName, latitudeDeg, longitudeDeg), from(time), until(time));
        event.getPlan().getStops().add(stop);
        return stop;
    }

    public Turn turn(Stop stop, String birdName, String time) {
        Turn turn = Fresh.turn(bird(birdName), from(time), until(time));
        stop.getTurns().add(turn);
        return turn;
    }

    public Bird bird(String name) {
        return event.getBirds().stream().filter(bird -> name.equals(bird.getName())).findFirst().orElseGet(() -> {
            Bird bird = Fresh.bird();
            bird.setName(name);
            event.getBirds().add(bird);
            return bird;
        });
    }

    public DaySheet sheet(Finding... findings) {
        return DaySheet.of(Outlook.of(event, null), List.of(findings), new LightMemory()).orElseThrow();
    }

    /** A finding about things, made by hand. */
    public static Finding finding(Severity severity, Identified... things) {
        return new Finding("rule", severity, Statement.words("Something about it."), List.of(things), Optional.empty(),
                Optional.empty(), "", Optional.empty());
    }

    public static Instant at(String time) {
        int day = 20 + (time.startsWith("+") ? time.charAt(1) - '0' : 0);
        String clock = time.substring(time.indexOf(' ') + 1);
        return Instant.parse("2031-06-" + day + "T" + clock + (clock.length() == 2 ? ":00" : "") + ":00Z");
    }

    private static Instant from(String time) {
        return at(time.substring(0, time.indexOf('-')));
    }

    private static Instant until(String time) {
        String day = time.startsWith("+") ? time.substring(0, 3) : "";
        return at(day + time.substring(time.indexOf('-') + 1));
    }

    private Site site(String name, double latitudeDeg, double longitudeDeg) {
        return event.getSites().stream().filter(site -> name.equals(site.getName())).findFirst().orElseGet(() -> {
            Site site = Fresh.site();
            site.setName(name);
            site.setLatitudeDeg(latitudeDeg);
            site.setLongitudeDeg(longitudeDeg);
            site.getSquares().add("HP94");
            event.getSites().add(site);
            return site;
        });
    }
}
