package org.straddle.kit.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/**
 * North works from Old Pier, 10:00 to 12:00, and is out from 09:00 to 14:00; South is at High Fell, 11:00 to 12:30, and out
 * from 10:30 to 13:00. Somebody timed every drive, in minutes:
 *
 * <pre>
 *              High Fell  Anchor  Beacon
 * Old Pier     40         10      30
 * High Fell               35      20
 * Anchor (base of North)          60
 * </pre>
 */
class SharedSpareTest {

    private final Event event = Fresh.event("Midsummer", "UTC", LocalDate.parse("2031-06-22"), LocalDate.parse("2031-06-22"));
    private final Team north = team("North", 1, "anchor");
    private final Team south = team("South", 2, "beacon");
    private final Site pier = site("Old Pier", 50.1);
    private final Site fell = site("High Fell", 50.2);
    private Base anchor;
    private Base beacon;

    @BeforeEach
    void plan() {
        anchor = base("Anchor", 50.3);
        beacon = base("Beacon", 50.4);
        day(north, "09:00", "14:00", anchor);
        day(south, "10:30", "13:00", beacon);
        stop(north, pier, "10:00", "12:00", WorkMode.FM);
        stop(south, fell, "11:00", "12:30", null);
        drive(pier, fell, 40);
        drive(pier, anchor, 10);
        drive(pier, beacon, 30);
        drive(fell, anchor, 35);
        drive(fell, beacon, 20);
        drive(anchor, beacon, 60);
        for (Role role : List.of(Role.RADIO, Role.FEEDLINE, Role.POWER, Role.ANTENNA)) {
            item(north, "north's " + role.getLiteral(), role);
        }
    }

    @Test
    void whoHasThePieceAndWhereBothMeetHourByHour() {
        KitItem handheld = item(south, "handheld", Role.RADIO);
        List<SharedSpare> shared = shared();
        assertEquals(1, shared.size(), "only the radio stops the work and is carried by the other team");
        SharedSpare radio = shared.get(0);
        assertEquals(north.getKits().get(0).getItems().get(0), radio.failed());
        assertEquals(handheld, radio.piece());
        assertEquals(south, radio.holder());
        // At 11:00 they are at Old Pier and High Fell: 40, 40, 35 and 30 minutes to Old Pier, High Fell, Anchor and Beacon.
        // At 12:00 North is on its way to Anchor: 40, 35, 35 and 60 minutes; of two that are equal the first by name.
        assertEquals(List.of(meeting("11:00", pier, fell, 40, beacon, 30), meeting("12:00", anchor, fell, 35, anchor, 35)),
                radio.meeting().stream().map(SharedSpareTest::told).toList());
        assertTrue(radio.sentence().contains("within 30 min at the best hour and 35 min at the worst"), radio.sentence());
    }

    @Test
    void teamsThatAreNeverOutTogetherSaySo() {
        item(south, "handheld", Role.RADIO);
        south.getDays().get(0).setFrom(Instant.parse("2031-06-22T15:00:00Z"));
        south.getDays().get(0).setUntil(Instant.parse("2031-06-22T20:00:00Z"));
        event.getPlan().getStops().remove(1);
        assertEquals(List.of(), shared().get(0).meeting());
        assertTrue(shared().get(0).sentence().endsWith("both teams are never out at the same hour."), shared().get(0).sentence());
    }

    @Test
    void aPieceMustHelpWithAllThatTheFailureStops() {
        item(south, "handheld", Role.RADIO).getModes().add(WorkMode.FM);
        assertEquals(1, shared().size());
        Stop stop = event.getPlan().getStops().get(0);
        turn(stop, WorkMode.LINEAR, "11:30");
        assertEquals(List.of(), shared(), "an FM radio does not save the linear turn");
    }

    @Test
    void withASpareOfItsOwnTheTeamAsksNobody() {
        item(south, "handheld", Role.RADIO);
        item(north, "second radio", Role.RADIO);
        assertEquals(List.of(), shared());
    }

    private List<SharedSpare> shared() {
        return SharedSpare.of(north, Outlook.of(event, null), Itinerary.of(event));
    }

    private record Told(Instant hour, String team, String holder, long apart, String meet, long soonest) {
    }

    private static Told meeting(String at, Identified here, Identified there, long apart, Identified meet, long soonest) {
        return new Told(time(at), name(here), name(there), apart, name(meet), soonest);
    }

    private static Told told(SharedSpare.Meeting meeting) {
        return new Told(meeting.hour(), name(meeting.team()), name(meeting.holder()), meeting.apart().total().toMinutes(),
                name(meeting.meet()), meeting.soonest().toMinutes());
    }

    private static String name(Identified place) {
        return place instanceof Site site ? site.getName() : ((Base) place).getName();
    }

    private static Instant time(String clock) {
        return Instant.parse("2031-06-22T" + clock + ":00Z");
    }

    private Team team(String name, int number, String base) {
        Team team = Fresh.team();
        team.setName(name);
        team.setNumber(number);
        Kit kit = Fresh.kit();
        kit.setName(base);
        event.getKits().add(kit);
        team.getKits().add(kit);
        event.getTeams().add(team);
        return team;
    }

    private Site site(String name, double latitudeDeg) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(latitudeDeg);
        site.setLongitudeDeg(0.5);
        event.getSites().add(site);
        return site;
    }

    private Base base(String name, double latitudeDeg) {
        Base base = Fresh.base();
        base.setName(name);
        base.setLatitudeDeg(latitudeDeg);
        base.setLongitudeDeg(0.5);
        event.getBases().add(base);
        return base;
    }

    private static void day(Team team, String from, String until, Base base) {
        TeamDay day = Fresh.teamDay(time(from), time(until), base, base);
        team.getDays().add(day);
    }

    private void stop(Team team, Site site, String arrival, String departure, WorkMode works) {
        Stop stop = Fresh.stop(team, site, time(arrival), time(departure));
        event.getPlan().getStops().add(stop);
        if (works != null) {
            turn(stop, works, "10:30");
        }
    }

    private void turn(Stop stop, WorkMode mode, String start) {
        Bird bird = Fresh.bird();
        bird.setName(mode.getLiteral());
        bird.setMode(mode);
        event.getBirds().add(bird);
        Turn turn = Fresh.turn(bird, time(start), time(start).plus(Duration.ofMinutes(10)));
        stop.getTurns().add(turn);
    }

    private void drive(Identified from, Identified to, double minutes) {
        EnteredDrive drive = StraddleFactory.eINSTANCE.createEnteredDrive();
        drive.setFrom(from);
        drive.setTo(to);
        drive.setMinutes(minutes);
        event.getEnteredDrives().add(drive);
    }

    private static KitItem item(Team team, String name, Role role) {
        KitItem item = Fresh.kitItem(name, role);
        team.getKits().get(0).getItems().add(item);
        return item;
    }
}
