package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/** One stop of team 1 in HP94 and HP84 from ten to eleven, with a turn on Auk from 10:20 to 10:30. */
class BansTest {

    private static final Window STAY = Window.parse("2031-06-21T10:00:00Z/2031-06-21T11:00:00Z");
    private static final Window TURN = Window.parse("2031-06-21T10:20:00Z/2031-06-21T10:30:00Z");

    private final Event event = Fresh.event("Bans");
    private final Team team = Fresh.team();
    private final Team other = Fresh.team();
    private final Site site = Fresh.site();
    private final Site elsewhere = Fresh.site();
    private final Bird auk = Fresh.bird();
    private final Bird tern = Fresh.bird();

    {
        event.getTeams().addAll(List.of(team, other));
        event.getSites().addAll(List.of(site, elsewhere));
        event.getBirds().addAll(List.of(auk, tern));
        site.getSquares().addAll(List.of("HP94", "HP84"));
    }

    private Ban ban(String from, String until) {
        Ban ban = StraddleFactory.eINSTANCE.createBan();
        ban.setFrom(from.isEmpty() ? null : Instant.parse("2031-06-21T" + from + ":00Z"));
        ban.setUntil(until.isEmpty() ? null : Instant.parse("2031-06-21T" + until + ":00Z"));
        event.getPlan().getBans().add(ban);
        return ban;
    }

    /** What of stop, turn and drive is banned, as letters; the drive is the stop's hour on the road. */
    private String banned(Bans bans, Team team, Site site, Bird bird) {
        return (bans.onStop(team, site, STAY).isEmpty() ? "" : "s") + (bans.onTurn(team, site, bird, TURN).isEmpty() ? "" : "t")
                + (bans.onDrive(team, STAY).isEmpty() ? "" : "d");
    }

    private String banned(String from, String until, Consumer<Ban> names) {
        event.getPlan().getBans().clear();
        names.accept(ban(from, until));
        return banned(Bans.of(event), team, site, auk);
    }

    @Test
    void whatABanLeavesEmptyMatchesAnything() {
        assertEquals("std", banned("", "", ban -> ban.setTeam(team)));
        assertEquals("st", banned("", "", ban -> ban.setSite(site)));
        assertEquals("st", banned("", "", ban -> ban.setSquare("HP84")));
        assertEquals("t", banned("", "", ban -> ban.setBird(auk)));
        assertEquals("std", banned("10:00", "11:00", ban -> { }));
        assertEquals("st", banned("", "", ban -> {
            ban.setTeam(team);
            ban.setSite(site);
            ban.setSquare(" hp94 ");
        }));
        assertEquals("t", banned("", "", ban -> {
            ban.setTeam(team);
            ban.setSite(site);
            ban.setBird(auk);
        }));
    }

    @Test
    void allThatABanNamesHasToMatch() {
        assertEquals("", banned("", "", ban -> ban.setTeam(other)));
        assertEquals("", banned("", "", ban -> ban.setSite(elsewhere)));
        assertEquals("", banned("", "", ban -> ban.setBird(tern)));
        assertEquals("", banned("", "", ban -> ban.setSquare("HP95")));
        assertEquals("", banned("", "", ban -> {
            ban.setTeam(team);
            ban.setSite(elsewhere);
        }));
        assertEquals("", banned("", "", ban -> {
            ban.setTeam(other);
            ban.setBird(auk);
        }));
    }

    @Test
    void periodsAreHalfOpen() {
        assertEquals("std", banned("10:29", "", ban -> ban.setTeam(team)));
        assertEquals("sd", banned("10:30", "", ban -> ban.setTeam(team)), "the turn is over");
        assertEquals("", banned("11:00", "12:00", ban -> ban.setTeam(team)));
        assertEquals("", banned("09:00", "10:00", ban -> ban.setTeam(team)));
        assertEquals("sd", banned("", "10:01", ban -> ban.setTeam(team)), "set-up alone");
    }

    @Test
    void aSlipForbidsNothing() {
        assertEquals("", banned("", "", ban -> { }), "says nothing");
        assertEquals("", banned("11:00", "10:00", ban -> ban.setTeam(team)), "over before it begins");
        assertEquals("", banned("", "", ban -> ban.setSquare("no square")));
    }

    @Test
    void thingsAreKnownByTheirIdInEveryCopyOfTheEvent() {
        Ban ban = ban("", "");
        ban.setTeam(team);
        Event copy = Snapshot.of(event);
        assertEquals("std", banned(Bans.of(copy), team, site, auk));
        assertEquals("std", banned(Bans.of(Fresh.event("None")).and(List.of(ban)), copy.getTeams().get(0),
                copy.getSites().get(0), copy.getBirds().get(0)));
    }
}
