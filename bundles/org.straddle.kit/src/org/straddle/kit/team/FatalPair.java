package org.straddle.kit.team;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Failure;

/**
 * Two pieces whose failure together stops work, once, with all that it stops.
 *
 * @param stops at least one
 */
public record FatalPair(Failure failure, List<Answer> stops) {

    public FatalPair {
        stops = List.copyOf(stops);
    }

    /** Of several answers, in the order in which they are met. */
    static List<FatalPair> in(List<Answer> answers) {
        Map<Failure, List<Answer>> stops = new LinkedHashMap<>();
        answers.forEach(answer -> answer.pairs().forEach(pair -> stops.computeIfAbsent(pair, any -> new ArrayList<>()).add(answer)));
        return stops.entrySet().stream().map(entry -> new FatalPair(entry.getKey(), entry.getValue())).toList();
    }
}
