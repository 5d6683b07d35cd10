package org.straddle.publish;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

import org.straddle.check.Finding;
import org.straddle.model.Access;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Link;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.model.Verdict;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.StoredElements;
import org.straddle.sky.ElementSet;

/** A small invented event: two teams, two sites, one bird; tests put the stops in. */
final class Sketch {

    static final PublicationSettings FIRST = new PublicationSettings(1, Instant.parse("2031-06-19T18:00:00Z"));

    final Event event = Fresh.event("Skerry sketch");
    final Site line = site("Plover Line", 64.59, -22, SiteKind.LINE, "HP84", "HP94");
    final Site corner = site("Knot Corner", 64, -20, SiteKind.CORNER, "HP93", "IP03", "HP94", "IP04");
    final Base base = Fresh.base();
    final Team first = team(1, "Sanderlings", "Ida Invented", "Q0AAR", "Kin of Ida, +999 555 0101");
    final Team second = team(2, "Turnstones", "Bo Invented", "Q1SKY/P", "Kin of Bo, +999 555 0102");
    final Bird bird = bird();

    Sketch(String zone) {
        event.setClub("Skerry Radio Circle");
        event.setZone(zone);
        event.setFirstDay(LocalDate.parse("2031-06-20"));
        event.setLastDay(LocalDate.parse("2031-06-21"));
        event.setAnnouncementText("We rove at midsummer.\n\nListen for us.");
        base.setName("Selfoss");
        base.setLatitudeDeg(63.933);
        base.setLongitudeDeg(-21);
        event.getBases().add(base);
        event.getSites().addAll(List.of(line, corner));
        for (Team team : List.of(first, second)) {
            day(team, "2031-06-20T07:00:00Z", "2031-06-20T20:00:00Z");
            day(team, "2031-06-21T07:00:00Z", "2031-06-21T20:00:00Z");
            event.getTeams().add(team);
            event.getOperators().addAll(team.getOperators());
        }
        event.getBirds().add(bird);
    }

    Sketch() {
        this("Atlantic/Reykjavik");
    }

    /** {@code stop(team, site, "20T09:00", "20T12:00")}: day of June 2031 and UTC. */
    Stop stop(Team team, Site site, String arrival, String departure) {
        Stop stop = Fresh.stop(team, site, june(arrival), june(departure));
        event.getPlan().getStops().add(stop);
        return stop;
    }

    Turn turn(Stop stop, String start, String end) {
        Turn turn = Fresh.turn(bird, june(start), june(end));
        stop.getTurns().add(turn);
        return turn;
    }

    static Instant june(String dayAndTime) {
        return Instant.parse("2031-06-" + dayAndTime + (dayAndTime.length() == 8 ? ":00Z" : "Z"));
    }

    Review reviewed(Site site) {
        Visit visit = Fresh.visit();
        visit.setDate(LocalDate.parse("2031-06-01"));
        visit.setRoadSpeedKmh(90);
        visit.setAccess("Lay-by");
        Hazard hazard = StraddleFactory.eINSTANCE.createHazard();
        hazard.setKind(HazardKind.TRAFFIC);
        hazard.setDescription("Blind bend");
        hazard.setDistanceM(12);
        hazard.setMeasure("Vests on");
        visit.getHazards().add(hazard);
        site.getVisits().add(visit);
        Review review = Fresh.review();
        review.setReviewer("Q0AAR");
        review.setTeam(first);
        review.setDate(LocalDate.parse("2031-06-02"));
        review.setSecond("Q1SKY/P");
        review.setSecondAt(LocalDate.parse("2031-06-02").atTime(18, 0).toInstant(ZoneOffset.UTC));
        review.setVerdict(Verdict.GO_WITH_CARE);
        review.setVisit(visit);
        site.getReviews().add(review);
        return review;
    }

    Outlook outlook() {
        return Outlook.of(event, null);
    }

    Publication publication(Finding... findings) {
        return Publication.of(outlook(), List.of(findings), FIRST);
    }

    String sheet(String fileName, Finding... findings) {
        return sheet(publication(findings), fileName);
    }

    static String sheet(Publication publication, String fileName) {
        return publication.sheets().stream().filter(sheet -> sheet.fileName().equals(fileName)).findFirst()
                .orElseThrow().text();
    }

    private static Site site(String name, double latitudeDeg, double longitudeDeg, SiteKind kind, String... squares) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(latitudeDeg);
        site.setLongitudeDeg(longitudeDeg);
        site.setKind(kind);
        site.getSquares().addAll(List.of(squares));
        return site;
    }

    private static Team team(int number, String name, String operatorName, String callSign, String contact) {
        Operator operator = Fresh.operator();
        operator.setName(operatorName);
        operator.setCallSign(callSign);
        operator.setEmergencyContact(contact);
        Team team = Fresh.team();
        team.setNumber(number);
        team.setName(name);
        team.getOperators().add(operator);
        return team;
    }

    private void day(Team team, String from, String until) {
        TeamDay day = Fresh.teamDay(Instant.parse(from), Instant.parse(until), base, base);
        team.getDays().add(day);
    }

    private static Bird bird() {
        Bird bird = Fresh.bird();
        bird.setName("Tern-1 (demo)");
        bird.setCatalogueNumber(99001);
        bird.setMode(WorkMode.LINEAR);
        bird.setAccess(Access.PASSBAND);
        bird.setState(BirdState.WORKING);
        bird.setUplink(link(435.110, 435.150, 67, true));
        bird.setDownlink(link(145.850, 145.890, 0, false));
        // Synthetic: 540 km, nearly polar; one day old at the first pass.
        ElementSet set = new ElementSet("Tern-1 (demo)", 99001, "", Instant.parse("2031-06-19T00:00:00Z"), 15.08757383,
                0.0012, 97.53, 240, 90, 270, 3e-5, 1e-5, 0, 1, 1);
        bird.getElementSets().add(StoredElements.toBirdElements(set, "sketch.tle", "", Instant.EPOCH));
        return bird;
    }

    private static Link link(double lowMhz, double highMhz, double toneHz, boolean inverted) {
        Link link = Fresh.link(lowMhz, highMhz);
        link.setToneHz(toneHz);
        link.setInverted(inverted);
        return link;
    }
}
