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
import org.straddle.plan.problem.StationTimes;
import org.straddle.sky.Window;

/** The bans of an event in the terms of a problem: for each day of a team, what it may not do where. */
final class EventBans {

    private EventBans() {
    }

    /** @param hours tells when teams eat: no turn then, nor so near that setting up or taking down would fill the pause */
    static BannedTimes of(Bans bans, DutyHours hours, StationTimes times, ProblemClock clock, List<Team> teams, List<Site> sites, List<Bird> birds,
            List<PlanDay> days) {
        List<BannedTimes.Closed> closed = new ArrayList<>();
        List<BannedTimes.Silent> silent = new ArrayList<>();
        for (Ban ban : bans.all()) {
            for (int day = 0; day < days.size(); day++) {
                int number = day;
                PlanDay out = days.get(day);
                Team team = teams.get(out.team());
                Bans.period(ban, clock.window(out.from(), out.until())).ifPresent(period -> {
                    int from = clock.floor(period.start());
                    int until = clock.ceiling(period.end());
                    for (int site = 0; site < sites.size(); site++) {
                        if (Bans.forbidsStop(ban, team, sites.get(site))) {
                            closed.add(new BannedTimes.Closed(number, site, from, until));
                        }
                        for (int bird = 0; ban.getBird() != null && bird < birds.size(); bird++) {
                            if (Bans.forbidsTurn(ban, team, sites.get(site), birds.get(bird))) {
                                silent.add(new BannedTimes.Silent(number, site, bird, from, until));
                            }
                        }
                    }
                });
            }
        }
        List<BannedTimes.Quiet> quiet = new ArrayList<>();
        for (int day = 0; day < days.size(); day++) {
            PlanDay out = days.get(day);
            for (Window meal : hours.meals(teams.get(out.team()), clock.window(out.from(), out.until()))) {
                quiet.add(new BannedTimes.Quiet(day, clock.floor(meal.start()) - times.takeDown(),
                        clock.ceiling(meal.end()) + times.setUp()));
            }
        }
        return new BannedTimes(closed, silent, quiet);
    }
}
