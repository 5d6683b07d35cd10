package org.straddle.kit.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.BirdState;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Pass;

/** One operator in JO22, a team with one turn on one invented bird on 22 June 2031, seen from 5 June. */
class PracticeTest {

    private static final LocalDate TODAY = LocalDate.parse("2031-06-05");
    private static final ZoneId ZONE = ZoneId.of("Europe/Amsterdam");

    private final Event event = Fresh.event("Midsummer", ZONE.getId(), LocalDate.parse("2031-06-22"), LocalDate.parse("2031-06-22"));
    private final Team team = Fresh.team();
    private final Operator operator = Fresh.operator();
    private final Bird bird = Fresh.bird();
    private final Bird other = Fresh.bird();

    @BeforeEach
    void plan() {
        operator.setCallSign("Q0AAR");
        operator.setHomeLocator("JO22");
        event.getOperators().add(operator);
        team.getOperators().add(operator);
        event.getTeams().add(team);
        elements(bird, 100);
        elements(other, 250);
        event.getBirds().addAll(List.of(bird, other));
        Site site = Fresh.site();
        site.setLatitudeDeg(64.5);
        site.setLongitudeDeg(-20);
        OneTurn.plan(event, team, site, bird);
    }

    private static void elements(Bird bird, double meanAnomalyDeg) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(90001);
        elements.setEpoch(Instant.parse("2031-06-14T00:00:00Z"));
        elements.setMeanMotionRevPerDay(14.6);
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(88);
        elements.setMeanAnomalyDeg(meanAnomalyDeg);
        bird.getElementSets().add(elements);
    }

    /** JO22 is the square from 4 to 6 degrees east and 52 to 53 degrees north; its middle is 52.5 N 5 E. */
    @Test
    void theHighestPassByDayInTheTenDaysBefore() {
        Practice practice = only(practices(TODAY));
        assertEquals(bird, practice.bird());
        assertEquals(operator, practice.operator());
        Pass highest = passesOverHome().stream().filter(pass -> pass.isWhole() && byDay(pass))
                .max(Comparator.comparingDouble(Pass::peakElevationDeg)).orElseThrow();
        assertTrue(highest.peakElevationDeg() >= Practice.LEAST_PEAK_DEG, "the case is worth something");
        assertEquals(highest.aos(), practice.pass().aos());
        assertEquals(highest.peakElevationDeg(), practice.pass().peakElevationDeg(), 1e-6);
        LocalDate day = practice.pass().aos().atZone(ZONE).toLocalDate();
        assertFalse(day.isBefore(LocalDate.parse("2031-06-12")) || day.isAfter(LocalDate.parse("2031-06-21")), day.toString());
    }

    private static boolean byDay(Pass pass) {
        LocalTime start = pass.aos().atZone(ZONE).toLocalTime();
        LocalTime end = pass.los().atZone(ZONE).toLocalTime();
        return !start.isBefore(LocalTime.of(8, 0)) && end.isBefore(LocalTime.of(22, 0)) && start.isBefore(end);
    }

    /** The same bird over a site at the operator's home from 12 to 21 June. */
    private List<Pass> passesOverHome() {
        Event home = EcoreUtil.copy(event);
        home.setFirstDay(LocalDate.parse("2031-06-12"));
        home.setLastDay(LocalDate.parse("2031-06-21"));
        home.setPlan(null);
        home.getTeams().clear();
        home.getBirds().remove(1);
        Site site = home.getSites().get(0);
        site.setLatitudeDeg(52.5);
        site.setLongitudeDeg(5);
        return Outlook.of(home, null).passes(site).stream().map(pass -> pass.pass()).toList();
    }

    @Test
    void daysThatAreOverDoNotCount() {
        LocalDate late = LocalDate.parse("2031-06-20");
        practices(late).forEach(practice -> assertFalse(practice.pass().aos().atZone(ZONE).toLocalDate().isBefore(late)));
        assertEquals(List.of(), practices(LocalDate.parse("2031-06-22")), "the event has begun");
    }

    @Test
    void onlyBirdsOfThePlanThatWorkAndOperatorsWithAHome() {
        bird.setState(BirdState.NOT_WORKING);
        assertEquals(List.of(), practices(TODAY));
        bird.setState(BirdState.UNKNOWN);
        operator.setHomeLocator("somewhere");
        assertEquals(List.of(), practices(TODAY));
        assertEquals(List.of(operator), Practice.homeless(team));
        operator.setHomeLocator("JO22");
        assertEquals(List.of(), Practice.homeless(team));
        Operator guest = Fresh.operator();
        guest.setHomeLocator("JO22");
        event.getOperators().add(guest);
        assertEquals(Set.of(operator), Set.copyOf(practices(TODAY).stream().map(Practice::operator).toList()), "of no team");
    }

    private List<Practice> practices(LocalDate today) {
        return Practice.of(event, today, null);
    }

    private static Practice only(List<Practice> all) {
        assertEquals(1, all.size(), all.toString());
        return all.get(0);
    }
}
