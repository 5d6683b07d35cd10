package org.straddle.publish;

import java.util.List;
import java.util.Optional;

import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.words.Catalogue;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.split.PlanB;
import org.straddle.worth.split.SplitTable;

/** What briefs say of how a plan holds: chances of turns, other places, and who holds which square. Worked out once for all teams. */
record PlanHold(PlanKeeping keeping, SplitTable split, ExpectedPlan expected, double least) {

    private static final Catalogue TEXTS = Catalogue.of(PlanHold.class);

    static PlanHold of(Outlook outlook) {
        ExpectedPlan expected = ExpectedPlan.of(EventWorth.of(outlook));
        return new PlanHold(PlanKeeping.of(outlook), SplitTable.of(expected), expected,
                HoldFigures.of(outlook.event().getPolicies()).leastKeeping());
    }

    /** The chance that a turn is kept as published, in words; empty when nobody can say. */
    String chance(Turn turn) {
        return keeping.chance(turn).isEmpty() ? "" : TEXTS.text("planHold.chance",
                "percent", PlanKeeping.percent(keeping.chance(turn).getAsDouble()));
    }

    /** The same as a bare figure. */
    String percent(Turn turn) {
        return keeping.chance(turn).isEmpty() ? "" : TEXTS.text("planHold.percent",
                "percent", PlanKeeping.percent(keeping.chance(turn).getAsDouble()));
    }

    /** Whether a turn is kept less surely than the event asks for. */
    boolean isWeak(Turn turn) {
        return keeping.chance(turn).isPresent() && keeping.chance(turn).getAsDouble() < least;
    }

    /** What the plan would lose without a turn, in words. */
    String brings(Turn turn) {
        return TEXTS.text("planHold.brings", "served", expected.gain(turn));
    }

    /** How the plan holds and what it is expected to bring. */
    String summary() {
        return TEXTS.text("planHold.summary", "turns", keeping.chances().size(), "kept", keeping.expected(),
                "served", expected.served().served(), "wanted", expected.served().wanted());
    }

    /** Where to go when the site of a stop cannot be used. */
    String planB(Stop stop) {
        Optional<PlanB> other = split.rows().stream().filter(row -> row.stay().stop() == stop).findFirst()
                .flatMap(SplitTable.Row::planB);
        return other.map(found -> TEXTS.text("planHold.planB", "site", Line.of(found.site().getName()),
                "squares", found.site().getSquares(), "minutes", found.drive().toMinutes(), "turns", found.turns().size(),
                "birds", found.turns().stream().map(work -> Line.of(work.bird().getName())).toList()))
                .orElse(TEXTS.text("planHold.noPlanB"));
    }

    /** One line for each square of each stop of all teams. */
    List<String> lines(Clock clock) {
        return split.rows().stream().map(row -> {
            SplitTable.OfSquare all = split.of(row.square());
            return TEXTS.text("planHold.row", "square", row.square().name(),
                    "arrival", clock.minute(row.stay().window().start(), row.day()).local(), "day", row.day(),
                    "team", row.team().getNumber(), "site", Line.of(row.site().getName()), "passes", row.passes(),
                    "all", all.passes(), "often", all.isWorkedTooOften());
        }).toList();
    }
}
