package org.straddle.check.rules.bird;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.fix.TrimTurn;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.NamedRule;
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
    static Finding finding(NamedRule rule, Work work, List<Window> parts, Statement state, Inspection in) {
        Statement says = parts.isEmpty()
                ? Statement.of("partOfTurn.none", "bird", work.bird(), "state", state, "team", work.team(), "site", work.site(),
                        "during", work.window())
                : Statement.of("partOfTurn.some", "bird", work.bird(), "state", state, "parts", parts, "team", work.team(),
                        "site", work.site(), "during", work.window());
        Finding finding = Finding.of(rule, says, work.turn(), work.bird()).at(work.window().start());
        Optional<Window> longest = parts.stream().max(Comparator.comparing(Window::duration));
        return finding.fixedBy(longest.map(part -> TrimTurn.to(part, work, Statement.of("partOfTurn.partCanWorked"), in.policies()))
                .orElseGet(() -> RemoveTurns.of(work)));
    }
}
