package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdReport;
import org.straddle.model.BirdState;
import org.straddle.model.Chaser;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Operator;
import org.straddle.model.ReportKind;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;

/**
 * The worth of an event's plan, computed from its files by the program, against ten thousand days of the same plan that
 * {@link LivedPlan} lives through with its own arithmetic. Both know the plan only as the numbers that are written here.
 */
class SimulationTest {

    private static final int DAYS = 10_000;

    /** Beyond four standard errors lies one result of 16,000 (normal distribution). */
    private static final double STANDARD_ERRORS = 4;

    private static final LocalDate DAY = LocalDate.of(2031, 6, 21);
    private static final Instant MIDNIGHT = Instant.parse("2031-06-21T00:00:00Z");

    private static final List<String> SQUARES = List.of("JJ50", "JJ60", "JJ70", "JJ80");

    /** Homes 50° to 80° north on the meridian near the birds: in full view, lower and lower, and out of reach. */
    private static final List<String> HOMES = List.of("JO50", "JP54", "JP56", "JQ50", "JQ59");

    private static List<LivedPlan.Person> people() {
        List<LivedPlan.Person> people = new ArrayList<>();
        double[] latitudes = {50.5, 64.5, 66.5, 70.5, 79.5};
        int[] counts = {34, 21, 18, 15, 12};
        for (int home = 0; home < counts.length; home++) {
            for (int n = 0; n < counts[home]; n++) {
                List<Integer> needs = new ArrayList<>();
                for (int square = 0; square < SQUARES.size(); square++) {
                    if ((n * 7 + home * 3 + square * 5) % 4 != 0) {
                        needs.add(square);
                    }
                }
                people.add(new LivedPlan.Person(latitudes[home], 11, needs));
            }
        }
        return people;
    }

    private static final LivedPlan PLAN = new LivedPlan(people(), List.of(
            new LivedPlan.Stop(80, false, 480, 540, 1, List.of(0, 1), List.of(new LivedPlan.Turn(498, 9, true, 0, 0.95),
                    new LivedPlan.Turn(512, 12, false, 1, 0.6))),
            new LivedPlan.Stop(50, true, 592, 660, 0.6, List.of(1), List.of(new LivedPlan.Turn(612, 8, true, 2, 0.5),
                    new LivedPlan.Turn(632, 14, true, 0, 0.95))),
            new LivedPlan.Stop(110, false, 780, 860, 1, List.of(2, 3), List.of(new LivedPlan.Turn(800, 7, false, 3, 0.4),
                    new LivedPlan.Turn(815, 11, true, 0, 0.95), new LivedPlan.Turn(835, 6, false, 1, 0.6)))), 300);

    @Test
    void aPlanServesAsManyAsItsWorthSays() {
        ExpectedPlan computed = ExpectedPlan.of(EventWorth.of(Outlook.of(event(PLAN), null)));
        double[] lived = PLAN.served(DAYS, 5, LivedPlan.World.EACH_TURN_BY_ITSELF);
        assertEquals(lived[0], computed.served().served(), STANDARD_ERRORS * lived[1], "standard error " + lived[1]);
        assertTrue(lived[1] < 0.005 * lived[0], "too rough to tell anything: " + lived[1] + " of " + lived[0]);
        // A turn that begins 3 minutes after the set-up is not kept with the usual 90 %.
        assertTrue(computed.differs(), computed.bySearch().served() + " as the search counts, " + computed.served().served());
    }

    /**
     * What the sum leaves out: a bird that fails once mostly fails all day, which serves fewer; who has a square calls no
     * more, which leaves time for others; callers are whole people. For this plan they come to 4 % more than the sum.
     */
    @Test
    void peopleAsTheyAreAreServedNearlyAsOften() {
        double computed = ExpectedPlan.of(EventWorth.of(Outlook.of(event(PLAN), null))).served().served();
        double[] lived = PLAN.served(DAYS, 6, LivedPlan.World.AS_PEOPLE_ARE);
        assertEquals(1.04, lived[0] / computed, 0.02, lived[0] + " of " + computed);
    }

    private static Event event(LivedPlan plan) {
        Event event = Fresh.event("Lived", "UTC", DAY, DAY);
        event.getPolicies().setBreakAfterMinutes(600);
        event.getPolicies().setRoadSpeedKmh(60);
        event.getPolicies().setDetourFactor(1);
        for (int i = 0; i < plan.people().size(); i++) {
            LivedPlan.Person person = plan.people().get(i);
            Chaser chaser = StraddleFactory.eINSTANCE.createChaser();
            chaser.setCallSign("Q0X" + i);
            chaser.setLocator(HOMES.get((int) List.of(50.5, 64.5, 66.5, 70.5, 79.5).indexOf(person.latitudeDeg())));
            person.needs().forEach(square -> chaser.getSquares().add(SQUARES.get(square)));
            event.getChaserList().add(chaser);
        }
        birds(event);
        event.setPlan(Fresh.plan());
        Base base = Fresh.base();
        base.setLatitudeDeg(0.001);
        base.setLongitudeDeg(LivedPlan.BIRDS_DEG);
        event.getBases().add(base);
        Team team = Fresh.team();
        for (String name : List.of("Ann", "Bo")) {
            Operator operator = Fresh.operator();
            operator.setName(name);
            event.getOperators().add(operator);
            team.getOperators().add(operator);
        }
        TeamDay day = Fresh.teamDay(at(plan.leavesFrom()), at(1430), base, null);
        team.getDays().add(day);
        event.getTeams().add(team);
        double longitudeDeg = LivedPlan.BIRDS_DEG;
        Identified before = base;
        for (LivedPlan.Stop planned : plan.stops()) {
            // a minute of drive is a kilometre on the equator, whose degree is 111.31949 km (WGS 84, 6378.137 km × π/180)
            longitudeDeg += planned.drive() / 111.31949;
            Site site = site(longitudeDeg, planned);
            event.getSites().add(site);
            if (planned.known()) {
                EnteredDrive road = StraddleFactory.eINSTANCE.createEnteredDrive();
                road.setFrom(before);
                road.setTo(site);
                road.setMinutes(planned.drive());
                event.getEnteredDrives().add(road);
            }
            before = site;
            org.straddle.model.Stop stop = Fresh.stop(team, site, at(planned.arrival()), at(planned.departure()));
            for (LivedPlan.Turn turn : planned.turns()) {
                org.straddle.model.Turn worked = Fresh.turn(event.getBirds().get(turn.bird()), at(turn.start()),
                        at(turn.start() + turn.minutes()));
                stop.getTurns().add(worked);
            }
            event.getPlan().getStops().add(stop);
        }
        return event;
    }

    /** Worked lately; of which nobody knows, linear; intermittent; only heard, linear. */
    private static void birds(Event event) {
        List<WorkMode> modes = List.of(WorkMode.FM, WorkMode.LINEAR, WorkMode.FM, WorkMode.LINEAR);
        for (int i = 0; i < modes.size(); i++) {
            Bird bird = Fresh.bird();
            bird.setName("Bird " + i);
            bird.setMode(modes.get(i));
            bird.setState(i == 2 ? BirdState.INTERMITTENT : BirdState.UNKNOWN);
            bird.setCatalogueNumber(i + 1);
            bird.getElementSets().add(PlanOnPaper.still(LivedPlan.BIRDS_DEG, i + 1));
            event.getBirds().add(bird);
        }
        report(event.getBirds().get(0), ReportKind.TWO_WAY_CONTACT);
        report(event.getBirds().get(3), ReportKind.HEARD);
    }

    private static void report(Bird bird, ReportKind kind) {
        BirdReport report = StraddleFactory.eINSTANCE.createBirdReport();
        report.setKind(kind);
        report.setAt(MIDNIGHT.minus(Duration.ofDays(3)));
        bird.getReports().add(report);
    }

    /** A site below the birds with its papers in order, unless it may be unusable. */
    private static Site site(double longitudeDeg, LivedPlan.Stop planned) {
        Site site = Fresh.site();
        site.setLatitudeDeg(0.001);
        site.setLongitudeDeg(longitudeDeg);
        planned.squares().forEach(square -> site.getSquares().add(SQUARES.get(square)));
        if (planned.usable() == 1) {
            PlanOnPaper.papers(site, DAY);
        }
        return site;
    }

    private static Instant at(int minute) {
        return MIDNIGHT.plus(Duration.ofMinutes(minute));
    }
}
