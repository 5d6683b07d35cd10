package org.straddle.worth.split;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.PlanWorth;
import org.straddle.worth.TurnChance;

/**
 * Who holds which square on which day: one row for each square of each stop, by square and time.
 *
 * @param squares what holds for a square in all
 */
public record SplitTable(List<Row> rows, List<OfSquare> squares) {

    /**
     * A square at one stop.
     *
     * @param day    local day of the arrival
     * @param passes turns that work it there
     * @param planB  where the team goes when it cannot use the site
     */
    public record Row(Square square, LocalDate day, Team team, Site site, Stay stay, int passes, Optional<PlanB> planB) {
    }

    /**
     * A square in all.
     *
     * @param passes turns that work it
     * @param served expected chasers served with it
     * @param wanted how many need it
     * @param tooMany turns that come too late for it, because earlier ones serve too many of those whom they could serve
     */
    public record OfSquare(Square square, int passes, double served, double wanted, int tooMany) {

        public boolean isWorkedTooOften() {
            return tooMany > 0;
        }
    }

    public SplitTable {
        rows = List.copyOf(rows);
        squares = List.copyOf(squares);
    }

    public static SplitTable of(Outlook outlook) {
        return of(EventWorth.of(outlook));
    }

    public static SplitTable of(EventWorth worth) {
        return of(ExpectedPlan.of(worth));
    }

    public static SplitTable of(ExpectedPlan expected) {
        Outlook outlook = expected.worth().outlook();
        Itinerary plan = Itinerary.of(outlook.event());
        List<Row> rows = new ArrayList<>();
        for (Stay stay : plan.stays()) {
            Optional<PlanB> other = outlook.isPlaced(stay.site()) ? PlanB.of(stay, expected, plan) : Optional.empty();
            for (Square square : outlook.squares(stay.site())) {
                rows.add(new Row(square, stay.window().start().atZone(outlook.zone()).toLocalDate(), stay.team(), stay.site(),
                        stay, stay.turns().size(), other));
            }
        }
        rows.sort(Comparator.comparing(Row::square).thenComparing(row -> row.stay.window().start()));
        return new SplitTable(rows, squares(expected));
    }

    private static List<OfSquare> squares(ExpectedPlan expected) {
        EventWorth worth = expected.worth();
        Map<Turn, TurnChance> chances = expected.turns();
        List<TurnChance> inTime = Itinerary.of(worth.outlook().event()).turns().stream().map(work -> chances.get(work.turn())).toList();
        PlanWorth whole = expected.served();
        List<OfSquare> all = new ArrayList<>();
        for (Square square : whole.squares()) {
            List<TurnChance> working = inTime.stream().filter(turn -> turn.squares().contains(square)).toList();
            if (!working.isEmpty() || whole.wanted(square) > 0) {
                int tooMany = (int) IntStream.range(0, working.size())
                        .filter(turn -> worth.isTooOften(square, working.get(turn), working.subList(0, turn))).count();
                all.add(new OfSquare(square, working.size(), whole.served(square), whole.wanted(square), tooMany));
            }
        }
        return all;
    }

    /** What holds for a square in all; one that nobody needs or works is there too. */
    public OfSquare of(Square square) {
        return squares.stream().filter(each -> each.square.equals(square)).findFirst()
                .orElse(new OfSquare(square, 0, 0, 0, 0));
    }
}
