package org.straddle.cli;

import java.util.List;

import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.Proposal;
import org.straddle.words.Catalogue;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.TurnChance;

/** What of a proposal to print as rows. */
enum ProposalRows {

    /** Each stop, and what it adds. */
    stops {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("team"), Table.column("site"),
                    Table.column("squares"), Table.column("arrival"),
                    Table.column("departure"), Table.column("turns"),
                    Table.column("birds"), Table.column("gain"), Table.column("pinned"));
            for (PlannedStop stop : proposal.stops()) {
                table.row(stop.team().getNumber(), stop.site().getName(), List.copyOf(stop.site().getSquares()),
                        stop.stay().start(), stop.stay().end(), stop.turns().size(),
                        String.join(", ", stop.turns().stream().map(turn -> turn.bird().getName()).distinct().toList()),
                        Rounded.thousandths(stop.gain()), stop.kept().isPresent());
            }
            return table;
        }
    },

    /** Each turn, what it is to the chasers, and what it adds by itself. */
    turns {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("team"), Table.column("site"),
                    Table.column("squares"), Table.column("bird"), Table.column("start"), Table.column("end"),
                    Table.column("effectiveMinutes"), Table.column("qualityPercent"), Table.column("callers"),
                    Table.column("chancePercent"), Table.column("gain"), Table.column("pinned"));
            proposal.stops().forEach(stop -> stop.turns().forEach(turn -> table.row(stop.team().getNumber(),
                    stop.site().getName(), List.copyOf(stop.site().getSquares()), turn.bird().getName(),
                    turn.window().start(), turn.window().end(), Rounded.tenths(turn.chance().minutes()),
                    Math.round(100 * turn.chance().quality()), Rounded.tenths(turn.chance().callers()),
                    Math.round(100 * inPlan(stop, turn, expected).chance()), Rounded.thousandths(turn.gain()), turn.kept().isPresent())));
            return table;
        }
    },

    /** Each square that somebody needs or that is worked: who needs it, who is expected to get it, who is still owed it. */
    squares {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("square"), Table.column("turns"),
                    Table.column("needed"), Table.column("served"), Table.column("owed"));
            expected.served().squares().forEach(square -> table.row(square.name(), expected.served().turns(square),
                    Rounded.tenths(expected.served().wanted(square)), Rounded.tenths(expected.served().served(square)),
                    Rounded.tenths(expected.served().owed(square))));
            return table;
        }
    },

    /** Each region where chasers live: the contacts they want, and how many are expected. */
    regions {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("region"), Table.column("contactsWanted"),
                    Table.column("served"));
            expected.served().byGroup().forEach(group -> table.row(group.group().name(),
                    Rounded.tenths(group.wanted()), Rounded.tenths(group.served())));
            return table;
        }
    },

    /** What becomes of each turn that was planned or published, and what is new. */
    changes {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("change"), Table.column("at"),
                    Table.column("sentence"), Table.column("turn"));
            proposal.changes().forEach(change -> table.row(change.kind().word(), change.at(), change.sentence(),
                    change.before().map(turn -> turn.getId()).orElse(null)));
            return table;
        }
    },

    /** Each square that somebody needs and the plan does not work, and why. */
    uncovered {
        @Override
        Table of(Proposal proposal, ExpectedPlan expected) {
            Table table = new Table(Table.column("square"), Table.column("demandPercent"),
                    Table.column("reason"), Table.column("cost"), Table.column("why"));
            proposal.uncovered().forEach(square -> table.row(square.square().name(), Math.round(100 * square.demand()),
                    square.reason().word(), square.cost().isPresent() ? Rounded.thousandths(square.cost().getAsDouble()) : null, square.why()));
            return table;
        }
    };


    private static final Catalogue TEXTS = Catalogue.of(ProposalRows.class);

    /** @param expected of the event with the proposal in it */
    abstract Table of(Proposal proposal, ExpectedPlan expected);

    /** The turn with its own chance of being kept. */
    private static TurnChance inPlan(PlannedStop stop, PlannedTurn turn, ExpectedPlan expected) {
        return Itinerary.of(expected.worth().outlook().event()).turns().stream()
                .filter(work -> work.window().equals(turn.window()) && work.bird().getId().equals(turn.bird().getId())
                        && work.team().getId().equals(stop.team().getId()))
                .findFirst().flatMap(work -> expected.of(work.turn())).orElse(turn.chance());
    }
}
