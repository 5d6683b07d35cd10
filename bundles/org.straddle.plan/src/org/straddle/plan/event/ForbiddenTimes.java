package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Bans;
import org.straddle.plan.problem.BannedTimes;
import org.straddle.plan.problem.PlanDay;
import org.straddle.sky.Window;

/** What bans, crews and meals forbid, in the terms of a problem: for each day of a team, what it may not do where and when. */
final class ForbiddenTimes {

    private final EventNumbers numbers;
    private final List<BannedTimes.Closed> closed = new ArrayList<>();
    private final List<BannedTimes.Silent> silent = new ArrayList<>();
    private final List<BannedTimes.Quiet> quiet = new ArrayList<>();

    private ForbiddenTimes(EventNumbers numbers) {
        this.numbers = numbers;
    }

    static BannedTimes of(EventNumbers numbers) {
        ForbiddenTimes times = new ForbiddenTimes(numbers);
        for (int day = 0; day < numbers.days().size(); day++) {
            PlanDay out = numbers.days().get(day);
            Team team = numbers.teams().get(out.team());
            Window whole = numbers.clock().window(out.from(), out.until());
            times.ban(day, team, whole);
            times.limitCrew(day, team, out);
            times.eat(day, team, whole);
        }
        return new BannedTimes(times.closed, times.silent, times.quiet);
    }

    private void ban(int day, Team team, Window whole) {
        for (Ban ban : numbers.bans().all()) {
            Bans.period(ban, whole).ifPresent(period -> {
                int from = numbers.clock().floor(period.start());
                int until = numbers.clock().ceiling(period.end());
                for (int site = 0; site < numbers.sites().size(); site++) {
                    if (Bans.forbidsStop(ban, team, numbers.sites().get(site))) {
                        closed.add(new BannedTimes.Closed(day, site, from, until));
                    }
                    for (int bird = 0; ban.getBird() != null && bird < numbers.birds().size(); bird++) {
                        if (Bans.forbidsTurn(ban, team, numbers.sites().get(site), numbers.birds().get(bird))) {
                            silent.add(new BannedTimes.Silent(day, site, bird, from, until));
                        }
                    }
                }
            });
        }
    }

    private void limitCrew(int day, Team team, PlanDay out) {
        boolean isAlone = numbers.crews().forbidStops(team);
        for (int site = 0; site < numbers.sites().size(); site++) {
            if (isAlone) {
                closed.add(new BannedTimes.Closed(day, site, out.from(), out.until()));
            }
            for (int bird = 0; bird < numbers.birds().size(); bird++) {
                Site there = numbers.sites().get(site);
                Bird worked = numbers.birds().get(bird);
                if (numbers.crews().forbidTurns(team, there, worked)) {
                    silent.add(new BannedTimes.Silent(day, site, bird, out.from(), out.until()));
                }
            }
        }
    }

    /** No turn while a team eats, nor so near that setting up or taking down would fill the pause. */
    private void eat(int day, Team team, Window whole) {
        for (Window meal : numbers.hours().meals(team, whole)) {
            quiet.add(new BannedTimes.Quiet(day, numbers.clock().floor(meal.start()) - numbers.times().takeDown(),
                    numbers.clock().ceiling(meal.end()) + numbers.times().setUp()));
        }
    }
}
