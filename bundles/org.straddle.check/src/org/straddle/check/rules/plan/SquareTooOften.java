package org.straddle.check.rules.plan;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.grid.Square;
import org.straddle.model.Identified;
import org.straddle.outlook.itinerary.Work;

/**
 * A chaser who was served once needs the square no more, so every further turn from a square serves fewer. A turn whose
 * chasers are mostly served by earlier turns is time that could be spent elsewhere.
 */
public final class SquareTooOften extends ScopedRule<Square> {

    public SquareTooOften() {
        super(Scope.SQUARE, CheckRule.SQUARE_TOO_OFTEN.id(), Severity.ADVICE);
    }

    @Override
    public void check(Square square, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = in.turnsFrom(square);
        // A turn from several squares is told of once.
        List<Work> own = turns.stream().filter(work -> !work.turn().isPinned()
                && in.outlook().squares(work.site()).first().equals(square) && isTooOften(work, in)).toList();
        if (own.isEmpty()) {
            return;
        }
        Work last = own.get(own.size() - 1);
        boolean several = in.outlook().squares(last.site()).size() > 1;
        Statement why = !in.worth().isNeeded(square) ? Statement.of("squareTooOften.nobodyNeeds", "turn", last, "several", several)
                : Statement.of("squareTooOften.servedBefore", "turn", last, "square", square.name(), "several", several,
                        "percent", percent(in.worth().taken(square, in.chance(last), in.earlier(square, last))),
                        "most", percent(in.worth().figures().tooOften()));
        findings.accept(Finding.of(this, Statement.of("squareTooOften.worked", "square", square.name(),
                "turns", turns.size(), "why", why), own.stream().map(Work::turn).toArray(Identified[]::new))
                .restingOn(own.stream().map(Work::window).toList())
                .at(own.get(0).window().start())
                .fixedBy(RemoveTurns.all(own.size() == 1 ? Statement.of("squareTooOften.removeTurn")
                        : Statement.of("squareTooOften.removeTheseTurns", "own", own.size()), own)));
    }

    /** Whether the turn comes too late for every square of its site. */
    private static boolean isTooOften(Work work, Inspection in) {
        return in.outlook().squares(work.site()).stream()
                .allMatch(square -> in.worth().isTooOften(square, in.chance(work), in.earlier(square, work)));
    }

    private static long percent(double share) {
        return Math.round(share * 100);
    }
}
