package org.straddle.kit.work;

import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a kit says to one task.
 *
 * @param missing  what the task needs and the kit does not give; empty when the task can be done
 * @param single   gear whose failure alone stops it, exactly all
 * @param pairs    pairs whose failure together stops it and neither does alone, exactly all
 * @param matters  all gear in a cut set of at most three pieces: one piece of any other gear can stay at home, and single
 *                 points and pairs stay the same
 * @param circular gear that works only if it supplies itself, so never
 */
public record Answer(Task task, List<Requirement> missing, List<Gear> single, List<Failure> pairs, Set<Gear> matters,
        List<Gear> circular) {

    public Answer {
        missing = List.copyOf(missing);
        single = List.copyOf(single);
        pairs = List.copyOf(pairs);
        matters = Set.copyOf(matters);
        circular = List.copyOf(circular);
    }

    public static Answer of(Task task, List<Gear> kit) {
        Pieces pieces = new Pieces(kit);
        Map<Requirement, Formula> demands = Demands.of(task, pieces);
        boolean[] works = pieces.working(pieces.all());
        List<Requirement> missing = demands.entrySet().stream().filter(demand -> !demand.getValue().holds(works))
                .map(Map.Entry::getKey).toList();
        List<BitSet> cuts = CutSets.of(Condition.of(demands, pieces), pieces.all(), 3);
        Set<Gear> matters = new LinkedHashSet<>();
        cuts.forEach(cut -> cut.stream().mapToObj(pieces::gear).forEach(matters::add));
        return new Answer(task, missing,
                cuts.stream().filter(cut -> cut.cardinality() == 1).map(cut -> pieces.gear(cut.nextSetBit(0)))
                        .distinct().toList(),
                cuts.stream().filter(cut -> cut.cardinality() == 2).map(cut -> Failure.of(cut, pieces)).distinct().toList(),
                matters, pieces.circular());
    }

    public boolean possible() {
        return missing.isEmpty();
    }
}
