package org.straddle.check.rules.gear;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.kit.energy.DayEnergy;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Identified;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Stay;

/** What the batteries in use have on each day against what its turns draw. */
public final class EnergyShort extends ScopedRule<Team> {

    public EnergyShort() {
        super(Scope.TEAM, CheckRule.ENERGY_SHORT.id(), Severity.WARNING);
    }

    @Override
    public void check(Team team, Inspection in, Consumer<Finding> findings) {
        ZoneId zone = in.outlook().zone();
        List<TeamEnergy> planned = TeamEnergy.of(team, in.itinerary(), in.policies(), zone);
        List<TeamEnergy> leftOn = TeamEnergy.leftOn(team, in.itinerary(), in.policies(), zone);
        for (int supply = 0; supply < planned.size(); supply++) {
            boolean told = false;
            for (int day = 0; day < planned.get(supply).days().size(); day++) {
                DayEnergy asPlanned = planned.get(supply).days().get(day);
                DayEnergy on = leftOn.get(supply).days().get(day);
                if (asPlanned.marginWh() < 0) {
                    findings.accept(finding(team, planned.get(supply), asPlanned, "energyShort.turns", in));
                } else if (on.marginWh() < 0 && !told) {
                    // the days after it are short because it is
                    told = true;
                    findings.accept(finding(team, leftOn.get(supply), on, "energyShort.leftOn", in).weighing(Severity.ADVICE));
                }
            }
        }
    }

    private Finding finding(Team team, TeamEnergy supply, DayEnergy energy, String key, Inspection in) {
        LocalDate day = LocalDate.parse(energy.day());
        List<Stay> stays = in.itinerary().of(team).stream().filter(stay -> day(stay, in).equals(day)).toList();
        Identified[] objects = Stream.concat(Stream.of(team), stays.stream().map(Stay::stop)).toArray(Identified[]::new);
        Fact lines = Fact.told(String.join(" ", supply.lines(energy)));
        Statement says = key.equals("energyShort.turns") ? Statement.of("energyShort.turns", "team", team, "lines", lines)
                : Statement.of("energyShort.leftOn", "team", team, "lines", lines);
        return Finding.of(this, says, objects).restingOn(energy.morningWh(), energy.drawnWh(), supply.spareWh(), List.copyOf(energy.runsOut().values()))
                .at(stays.get(0).window().start());
    }

    /** A stop after midnight belongs to the day on which its team set out. */
    private static LocalDate day(Stay stay, Inspection in) {
        return in.times().date(Drives.dayOf(stay).map(TeamDay::getFrom).orElse(stay.window().start()));
    }
}
