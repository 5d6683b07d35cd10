package org.straddle.kit;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.kit.asked.PlanAsks;
import org.straddle.kit.asked.Provided;
import org.straddle.kit.team.DryRuns;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;

/**
 * All that there is to say about what a team takes along: the list, what the plan asks for besides, what ends the work,
 * how long the batteries last, bags, flights, dry runs, what goes back to whom, and what was in the car again at each stop.
 *
 * @param stays the stops of the plan, by time
 */
public record Packing(Team team, PackingList list, PlanAsks asks, Resilience resilience, List<TeamEnergy> energy, DryRuns dryRuns,
        List<GoingBack> goingBack, List<Stay> stays, List<InCar> inCar) {

    public Packing {
        energy = List.copyOf(energy);
        goingBack = List.copyOf(goingBack);
        stays = List.copyOf(stays);
        inCar = List.copyOf(inCar);
    }

    public static Packing of(Team team, Outlook outlook) {
        Itinerary itinerary = Itinerary.of(outlook.event());
        return new Packing(team, PackingList.of(team), PlanAsks.of(team, outlook, itinerary), Resilience.of(team, itinerary),
                TeamEnergy.of(team, itinerary, outlook.policies(), outlook.zone()), DryRuns.of(team), GoingBack.of(team),
                itinerary.of(team), InCar.of(team, itinerary));
    }

    /** What somebody who packs should know besides the rows: one plain sentence each, the gravest first. */
    public List<String> remarks() {
        return Stream.of(list.remarks().stream(), asks.lacking().stream().map(Provided::sentence),
                dryRuns.open().stream(), new ResilienceText(resilience).singlePoints().stream())
                .flatMap(lines -> lines).toList();
    }

    /** Energy by day, a sentence each; one that says so where nothing is known. */
    public List<String> energyLines() {
        return TeamEnergy.lines(energy);
    }

    /** Bags, cells, and batteries on a flight, a sentence each. */
    public List<String> bagLines() {
        return Bags.lines(list.rows().stream().map(PackingRow::item).toList());
    }
}
