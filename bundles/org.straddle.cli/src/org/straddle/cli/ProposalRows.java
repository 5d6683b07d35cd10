package org.straddle.cli;

import java.util.List;
import java.util.OptionalDouble;

import org.straddle.plan.PlannedStop;
import org.straddle.plan.Proposal;

/** What of a proposal to print as rows. */
enum ProposalRows {

    /** Each stop, and what it adds. */
    stops {
        @Override
        Table of(Proposal proposal) {
            Table table = new Table(Table.column("team", "Team"), Table.column("site", "Site"),
                    Table.column("squares", "Squares"), Table.column("arrival", "Arrival (UTC)"),
                    Table.column("departure", "Departure (UTC)"), Table.column("turns", "Turns"),
                    Table.column("birds", "Birds"), Table.column("gain", "Adds"), Table.column("pinned", "Fixed"));
            for (PlannedStop stop : proposal.stops()) {
                table.row(stop.team().getNumber(), stop.site().getName(), List.copyOf(stop.site().getSquares()),
                        stop.stay().start(), stop.stay().end(), stop.turns().size(),
                        String.join(", ", stop.turns().stream().map(turn -> turn.bird().getName()).toList()),
                        rounded(stop.gain()), stop.kept().isPresent());
            }
            return table;
        }
    },

    /** Each turn, and what it adds by itself. */
    turns {
        @Override
        Table of(Proposal proposal) {
            Table table = new Table(Table.column("team", "Team"), Table.column("site", "Site"),
                    Table.column("squares", "Squares"), Table.column("bird", "Bird"), Table.column("start", "Start (UTC)"),
                    Table.column("end", "End (UTC)"), Table.column("gain", "Adds"), Table.column("pinned", "Fixed"));
            proposal.stops().forEach(stop -> stop.turns().forEach(turn -> table.row(stop.team().getNumber(),
                    stop.site().getName(), List.copyOf(stop.site().getSquares()), turn.bird().getName(),
                    turn.window().start(), turn.window().end(), rounded(turn.gain()), turn.kept().isPresent())));
            return table;
        }
    },

    /** What becomes of each turn that was planned or published, and what is new. */
    changes {
        @Override
        Table of(Proposal proposal) {
            Table table = new Table(Table.column("change", "Change"), Table.column("at", "At (UTC)"),
                    Table.column("sentence", "What"), Table.column("turn", "Turn"));
            proposal.changes().forEach(change -> table.row(change.kind().word(), change.at(), change.sentence(),
                    change.before().map(turn -> turn.getId()).orElse(null)));
            return table;
        }
    },

    /** Each square that somebody needs and the plan does not work, and why. */
    uncovered {
        @Override
        Table of(Proposal proposal) {
            Table table = new Table(Table.column("square", "Square"), Table.column("demandPercent", "Wanted by %"),
                    Table.column("reason", "Reason"), Table.column("cost", "Would cost"), Table.column("why", "Why"));
            proposal.uncovered().forEach(square -> table.row(square.square().name(), Math.round(100 * square.demand()),
                    square.reason().word(), square.cost().isPresent() ? rounded(square.cost()) : null, square.why()));
            return table;
        }
    };

    abstract Table of(Proposal proposal);

    private static Double rounded(OptionalDouble worth) {
        return rounded(worth.getAsDouble());
    }

    private static double rounded(double worth) {
        return Math.round(worth * 1000) / 1000.0;
    }
}
