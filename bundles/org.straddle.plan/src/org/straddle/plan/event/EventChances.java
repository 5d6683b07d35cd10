package org.straddle.plan.event;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Ban;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.SitePass;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.StationTimes;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;

/**
 * The chances of an event: every stretch of a pass that can be worked from a site while some team is out. A
 * pass is offered as a whole, because its first and last minutes carry the farthest contacts; only a very
 * long one is cut into several turns, and one that the bird is banned in, where the ban begins and ends.
 */
final class EventChances {

    /** Passes of birds in low orbits are shorter; common practice, no source. Seconds. */
    private static final int LONGEST_TURN = 20 * 60;

    private final EventNumbers numbers;
    private final Outlook outlook;
    private final ProblemClock clock;
    private final StationTimes times;
    private final List<Chance> chances = new ArrayList<>();

    private EventChances(EventNumbers numbers) {
        this.numbers = numbers;
        outlook = numbers.outlook();
        clock = numbers.clock();
        times = numbers.times();
    }

    static List<Chance> of(EventNumbers numbers) {
        EventChances found = new EventChances(numbers);
        // One bird after the other: where it stands for the chasers is computed once for all sites.
        for (int bird = 0; bird < numbers.birds().size(); bird++) {
            for (int site = numbers.usable().nextSetBit(0); site >= 0; site = numbers.usable().nextSetBit(site + 1)) {
                for (SitePass pass : found.outlook.passes(numbers.sites().get(site), numbers.birds().get(bird))) {
                    found.addPass(site, bird, pass);
                }
            }
        }
        return found.chances;
    }

    private void addPass(int site, int bird, SitePass pass) {
        if (pass.pass().peakElevationDeg() >= outlook.policies().minimumPeakElevationDeg()) {
            for (Window window : workable(outlook, numbers.bans(), pass)) {
                addTurns(site, bird, pass, clock.ceiling(window.start()), clock.floor(window.end()));
            }
        }
    }

    /** The parts of a pass that the bird can be worked in and that no ban on all teams takes away. */
    static List<Window> workable(Outlook outlook, Bans bans, SitePass pass) {
        List<Window> parts = outlook.workable(pass.bird(), pass.pass().window());
        for (Ban ban : bans.all()) {
            if (ban.getTeam() == null && Bans.forbidsTurn(ban, null, pass.site(), pass.bird())) {
                parts = Windows.without(parts, Bans.period(ban, pass.pass().window()).stream().toList());
            }
        }
        return parts;
    }

    private void addTurns(int site, int bird, SitePass pass, int from, int until) {
        int least = Math.max(1, clockSeconds(outlook.policies().minimumTurn()));
        int most = Math.max(LONGEST_TURN, least);
        for (int start = from; until - start >= least; start += most + times.turnGap()) {
            int first = start;
            int end = Math.min(until, start + most);
            if (numbers.days().stream().anyMatch(day -> holds(day, first, end))) {
                chances.add(new Chance(site, bird, start, end,
                        EventNumbers.service(numbers.worth().chance(pass, clock.window(start, end)))));
            }
        }
    }

    private boolean holds(PlanDay day, int start, int end) {
        return day.from() <= times.arrivalFor(start) && times.departureAfter(end) <= day.until();
    }

    /** Durations of {@link PolicyFigures} are whole seconds; what is longer than any event is cut. */
    static int clockSeconds(Duration duration) {
        return (int) Math.min(Integer.MAX_VALUE / 4, duration.getSeconds());
    }
}
