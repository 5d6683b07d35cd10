package org.straddle.check.rules.bird;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Statement;
import org.straddle.check.rules.NamedRule;
import org.straddle.model.Bird;
import org.straddle.model.Identified;
import org.straddle.outlook.itinerary.Work;

/** A finding about a bird and all turns on it. */
public final class BirdFinding {

    private BirdFinding() {
    }

    static Finding of(NamedRule rule, Bird bird, List<Work> turns, Statement says) {
        Stream<Identified> objects = Stream.concat(Stream.of(bird), turns.stream().map(Work::turn));
        return Finding.of(rule, says, objects.toArray(Identified[]::new))
                .restingOn(turns.stream().map(Work::window).toList()).at(turns.get(0).window().start());
    }

    /** {@code 3 turns are planned on it, the first 21 Jun 12:02 (10:02 UTC)}. */
    static Statement planned(List<Work> turns) {
        return Statement.of("birdFinding.turnsTurnsPlanned", "turns", turns.size(), "start", turns.get(0).window().start());
    }
}
