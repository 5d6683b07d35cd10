package org.straddle.daysheet.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.model.Team;

/**
 * Everything one team does.
 *
 * @param team     empty for the lane of stops that have no team
 * @param rows     rows for stops and drives, at least 1
 * @param findings those that name the team, but no stop or turn
 */
public record Lane(Optional<Team> team, LaneMark mark, String name, List<OpenSpan> spans, List<Light> light,
        List<PlacedStop> stops, List<PlacedDrive> drives, int rows, List<Finding> findings) {

    /** Stops, each followed by its turns. */
    public List<SheetItem> items() {
        return stops.stream().flatMap(stop -> Stream.concat(Stream.<SheetItem>of(stop), stop.turns().stream()))
                .toList();
    }

    /** All findings about the team, its stops and turns that nobody accepted, each once. */
    public List<Finding> open() {
        return Stream.concat(findings.stream(), items().stream().flatMap(item -> item.findings().stream()))
                .filter(finding -> finding.accepted().isEmpty()).distinct().sorted(Marking.GRAVEST_FIRST).toList();
    }
}
