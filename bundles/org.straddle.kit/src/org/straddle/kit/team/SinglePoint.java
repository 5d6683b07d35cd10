package org.straddle.kit.team;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;

/**
 * An item whose failure alone stops work, once, with all that it stops.
 *
 * @param stops at least one
 */
public record SinglePoint(Gear gear, List<Answer> stops) {

    public SinglePoint {
        stops = List.copyOf(stops);
    }

    /** Of several answers, in the order in which they are met. */
    static List<SinglePoint> in(List<Answer> answers) {
        Map<Gear, List<Answer>> stops = new LinkedHashMap<>();
        answers.forEach(answer -> answer.single().forEach(gear -> stops.computeIfAbsent(gear, any -> new ArrayList<>()).add(answer)));
        return stops.entrySet().stream().map(entry -> new SinglePoint(entry.getKey(), entry.getValue())).toList();
    }
}
