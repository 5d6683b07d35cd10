package org.straddle.outlook.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;

/**
 * The computed chances against days that are lived through one by one with drawn drives. The simulation shares no code with
 * what it tests: it reads the event's own figures, in seconds, without a histogram.
 */
class SimulatedDaysTest {

    private static final int DAYS = 20_000;
    private static final Instant MIDNIGHT = Instant.parse("2031-06-21T00:00:00Z");
    private static final double SET_UP = 15;
    private static final double TAKE_DOWN = 10;

    /** A stop as a few numbers, minutes since midnight. @param drive usual time of the drive there */
    private record Planned(double drive, boolean known, int arrival, int departure, int... turns) {
    }

    @Test
    void aDayWithLittleTimeAgreesWithTheSimulation() {
        agrees(List.of(new Planned(80, false, 480, 540, 497, 510), new Planned(50, false, 592, 650, 612, 630),
                new Planned(70, true, 722, 745, 738), new Planned(30, false, 775, 860, 790, 840)), 450);
    }

    @Test
    void aDayWithTimeInHandAgreesWithTheSimulation() {
        agrees(List.of(new Planned(80, true, 480, 540, 505), new Planned(50, false, 600, 650, 630),
                new Planned(110, false, 775, 880, 800, 815)), 500);
    }

    @Test
    void delaysPassAlongAndAreSoakedUp() {
        List<Planned> tight = List.of(new Planned(100, false, 480, 506, 496), new Planned(100, false, 606, 632, 622),
                new Planned(100, false, 732, 758, 748));
        double[] chances = agrees(tight, 450);
        assertTrue(chances[1] > chances[2] && chances[2] > chances[3], "each stop is later than the one before");
    }

    /** @return what was computed: the whole day, then the turns */
    private static double[] agrees(List<Planned> day, int dayBegins) {
        List<Turn> turns = new ArrayList<>();
        Outlook outlook = Outlook.of(event(day, dayBegins - 100, turns), null);
        PlanKeeping computed = PlanKeeping.of(outlook);
        double[] simulated = simulate(day, dayBegins - 100);
        double[] all = new double[turns.size() + 1];
        all[0] = computed.whole();
        for (int i = 0; i < turns.size(); i++) {
            all[i + 1] = computed.chance(turns.get(i)).orElseThrow();
        }
        for (int i = 0; i < all.length; i++) {
            double sampling = 4 * Math.sqrt(Math.max(simulated[i] * (1 - simulated[i]), 1e-4) / DAYS);
            assertEquals(simulated[i], all[i], sampling + 0.006, "turn " + i);
        }
        return all;
    }

    private static double[] simulate(List<Planned> day, int from) {
        Random random = new Random(14);
        double[] kept = new double[1 + day.stream().mapToInt(stop -> stop.turns.length).sum()];
        for (int n = 0; n < DAYS; n++) {
            boolean all = true;
            int turn = 1;
            // 0.8416 deviations: four drives of five take less
            double spread = day.get(0).known ? 0.07 : 0.15;
            double leaving = Math.max(from, day.get(0).arrival - day.get(0).drive * (1 + spread * 0.8416));
            for (Planned stop : day) {
                double drive = stop.drive * (1 + (stop.known ? 0.07 : 0.15) * random.nextGaussian());
                double ready = leaving + drive + SET_UP;
                for (int start : stop.turns) {
                    boolean there = ready <= start;
                    kept[turn++] += there ? 1 : 0;
                    all &= there;
                }
                leaving = Math.max(stop.departure, ready + TAKE_DOWN);
            }
            kept[0] += all ? 1 : 0;
        }
        for (int i = 0; i < kept.length; i++) {
            kept[i] /= DAYS;
        }
        return kept;
    }

    private static Event event(List<Planned> stops, int from, List<Turn> turns) {
        Event event = Fresh.event("Days");
        event.getPolicies().setBreakAfterMinutes(600);
        event.getPolicies().setRoadSpeedKmh(60);
        event.getPolicies().setDetourFactor(1);
        Base base = Fresh.base();
        base.setLatitudeDeg(0.001);
        base.setLongitudeDeg(10);
        event.getBases().add(base);
        Team team = Fresh.team();
        TeamDay day = Fresh.teamDay(at(from), at(1430), base, null);
        team.getDays().add(day);
        event.getTeams().add(team);
        Bird bird = Fresh.bird();
        event.getBirds().add(bird);
        event.setPlan(Fresh.plan());
        double longitudeDeg = 10;
        Identified before = base;
        for (Planned planned : stops) {
            // a minute of drive is a kilometre on the equator, whose degree is 111.31949 km (WGS 84, 6378.137 km × π/180)
            longitudeDeg += planned.drive / 111.31949;
            Site site = Fresh.site();
            site.setLatitudeDeg(0.001);
            site.setLongitudeDeg(longitudeDeg);
            event.getSites().add(site);
            if (planned.known) {
                EnteredDrive road = StraddleFactory.eINSTANCE.createEnteredDrive();
                road.setFrom(before);
                road.setTo(site);
                road.setMinutes(planned.drive);
                event.getEnteredDrives().add(road);
            }
            before = site;
            Stop stop = Fresh.stop(team, site, at(planned.arrival), at(planned.departure));
            for (int start : planned.turns) {
                Turn turn = Fresh.turn(bird, at(start), at(start + 4));
                stop.getTurns().add(turn);
                turns.add(turn);
            }
            event.getPlan().getStops().add(stop);
        }
        return event;
    }

    private static Instant at(int minute) {
        return MIDNIGHT.plus(Duration.ofMinutes(minute));
    }
}
