package org.straddle.check.rules.plan;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.mend.RemoveTurns;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.grid.Square;
import org.straddle.model.Identified;
import org.straddle.outlook.itinerary.Work;

/**
 * Every further pass from a square reaches fewer chasers who still need it; the event says how fewer. A turn from which
 * no square of its site gains anything any more is time that could be spent elsewhere.
 */
public final class SquareTooOften extends ScopedRule<Square> {

    public SquareTooOften() {
        super(Scope.SQUARE, "square-too-often", Severity.ADVICE);
    }

    @Override
    public void check(Square square, Inspection in, Consumer<Finding> findings) {
        List<Work> turns = turns(square, in);
        List<Work> surplus = turns.stream().filter(work -> isSurplus(work, in)).toList();
        // A turn from several squares is told of once.
        List<Work> own = surplus.stream().filter(work -> in.outlook().squares(work.site()).first().equals(square)).toList();
        if (own.isEmpty()) {
            return;
        }
        long wanted = in.policies().repeatWorths().stream().filter(worth -> worth > 0).count();
        double demand = in.outlook().demand(square);
        Work last = own.get(own.size() - 1);
        findings.accept(Finding.of(this, Statement.of("squareTooOften.workedTurnsWorth", "square", square.name(),
                "turns", turns.size(), "why", demand > 0 ? Statement.of("squareTooOften.chasersNeedEvent",
                "percent", percent(demand), "passes", wanted) : Statement.of("squareTooOften.nobodyNeeds"),
                "turn", last, "several", in.outlook().squares(last.site()).size() > 1),
                own.stream().map(Work::turn).toArray(Identified[]::new))
                .restingOn(own.stream().map(Work::window).toList(), demand, in.policies().repeatWorths())
                .at(own.get(0).window().start())
                .mendedBy(RemoveTurns.all(own.size() == 1 ? Statement.of("squareTooOften.removeTurn")
                        : Statement.of("squareTooOften.removeTheseTurns", "own", own.size()), own)));
    }

    /** Whether every square of the turn's site had all that it wants before the turn, or is wanted by nobody. */
    private static boolean isSurplus(Work work, Inspection in) {
        return !work.turn().isPinned() && in.outlook().squares(work.site()).stream()
                .allMatch(square -> worth(square, turns(square, in).indexOf(work), in) <= 0);
    }

    /** Of the pass that comes after so many others, 0 to 1. */
    private static double worth(Square square, int before, Inspection in) {
        List<Double> curve = in.policies().repeatWorths();
        return before < curve.size() ? in.outlook().demand(square) * curve.get(before) : 0;
    }

    /** All turns from the square, by time. */
    private static List<Work> turns(Square square, Inspection in) {
        return in.turnsFrom(square);
    }

    private static long percent(double share) {
        return Math.round(share * 100);
    }
}
