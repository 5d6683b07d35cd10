package org.straddle.check.rules.gear;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.EnergyBudget;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Stay;

/** What the batteries give on a day, full in the morning, against what the day's turns draw. */
public final class EnergyShort extends ScopedRule<Team> {

    public EnergyShort() {
        super(Scope.TEAM, CheckRule.ENERGY_SHORT.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        EnergyBudget budget = new EnergyBudget(in.packing(team).energy(), in.policies().usableEnergy(),
                in.policies().coldestDegC());
        if (!budget.isKnown()) {
            return;
        }
        Map<LocalDate, List<Stay>> days = in.itinerary().of(team).stream()
                .collect(Collectors.groupingBy(stay -> day(stay, in), TreeMap::new, Collectors.toList()));
        days.forEach((day, stays) -> {
            Duration working = sum(stays.stream().flatMap(stay -> stay.turns().stream())
                    .map(work -> work.window().duration()));
            Duration standing = sum(stays.stream().map(stay -> in.policies().standing(stay.window())));
            if (budget.isShortFor(working)) {
                findings.accept(finding(team, day, stays, Statement.of("energyShort.worksTurnsAll",
                        "drawn", drawn(working, budget)), working, budget));
            } else if (budget.isShortFor(standing)) {
                findings.accept(finding(team, day, stays, Statement.of("energyShort.hasEnergyIts",
                        "drawn", drawn(standing, budget)), standing, budget)
                        .weighing(Severity.ADVICE));
            }
        });
    }

    private Finding finding(Team team, LocalDate day, List<Stay> stays, Statement does, Duration working,
            EnergyBudget budget) {
        Identified[] objects = Stream.concat(Stream.of(team), stays.stream().map(Stay::stop)).toArray(Identified[]::new);
        return Finding.of(this, Statement.of("energyShort.dayItsKit", "team", team, "does", does, "day", day,
                "budget", Fact.told(budget.sentence())), objects)
                .restingOn(budget, working).at(stays.get(0).window().start());
    }

    /** {@code 3 h 20 min, which draws 41 Wh}. */
    private static Statement drawn(Duration time, EnergyBudget budget) {
        return Statement.of("energyShort.whichDrawsWh", "time", time, "drawsWh", Math.round(budget.drawsWh(time)));
    }

    /** A stop after midnight belongs to the day on which its team set out. */
    private static LocalDate day(Stay stay, Inspection in) {
        return in.times().date(Drives.dayOf(stay).map(TeamDay::getFrom).orElse(stay.window().start()));
    }

    private static Duration sum(Stream<Duration> times) {
        return times.reduce(Duration.ZERO, Duration::plus);
    }
}
