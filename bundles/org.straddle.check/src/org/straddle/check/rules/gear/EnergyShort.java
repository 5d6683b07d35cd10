package org.straddle.check.rules.gear;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.kit.EnergyBudget;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Stay;

/** What the batteries give on a day, full in the morning, against what the day's turns draw. */
public final class EnergyShort extends ScopedRule<Team> {

    public EnergyShort() {
        super(Scope.TEAM, "energy-short", Severity.WARNING, "The batteries last through the day");
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
                findings.accept(finding(team, day, stays, "works turns of " + drawn(working, budget) + " in all", working, budget));
            } else if (budget.isShortFor(standing)) {
                findings.accept(finding(team, day, stays, "has energy for its turns, but not for a station that stays on"
                        + " between set-up and take-down, " + drawn(standing, budget) + " in all", standing, budget)
                        .weighing(Severity.ADVICE));
            }
        });
    }

    private Finding finding(Team team, LocalDate day, List<Stay> stays, String does, Duration working,
            EnergyBudget budget) {
        Identified[] objects = Stream.concat(Stream.of(team), stays.stream().map(Stay::stop)).toArray(Identified[]::new);
        return Finding.of(this, Words.sentence(Words.name(team)) + " " + does + " on the day " + day
                + ", and its kit gives " + budget.sentence() + ".", objects)
                .restingOn(budget, working).at(stays.get(0).window().start());
    }

    /** {@code 3 h 20 min, which draws 41 Wh}. */
    private static String drawn(Duration time, EnergyBudget budget) {
        return Words.length(time) + ", which draws " + Math.round(budget.drawsWh(time)) + " Wh,";
    }

    /** A stop after midnight belongs to the day on which its team set out. */
    private static LocalDate day(Stay stay, Inspection in) {
        return in.words().date(Drives.dayOf(stay).map(TeamDay::getFrom).orElse(stay.window().start()));
    }

    private static Duration sum(Stream<Duration> times) {
        return times.reduce(Duration.ZERO, Duration::plus);
    }
}
