package org.straddle.check.rules.bird;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.check.mend.RemoveTurns;
import org.straddle.check.mend.TrimTurn;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.NamedRule;
import org.straddle.check.rules.Words;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** A finding about a turn of which only a part can be used. */
public final class PartOfTurn {

    private PartOfTurn() {
    }

    /**
     * @param parts the times within the turn that can be used, in order
     * @param state what the bird is during them
     */
    static Finding finding(NamedRule rule, Work work, List<Window> parts, String state, Inspection in) {
        String when = parts.isEmpty() ? " is not " + state + " during the turn of "
                : " is " + state + " only " + Words.list(parts.stream().map(in.words()::during).toList())
                        + " of the turn of ";
        Finding finding = Finding.of(rule, Words.sentence(Words.name(work.bird())) + when + Words.name(work.team())
                + " at " + Words.name(work.site()) + ", " + in.words().during(work.window()) + ".", work.turn(),
                work.bird()).at(work.window().start());
        Optional<Window> longest = parts.stream().max(Comparator.comparing(Window::duration));
        return finding.mendedBy(longest.map(part -> TrimTurn.to(part, work, "the part that can be worked", in.policies()))
                .orElseGet(() -> RemoveTurns.of(work)));
    }
}
