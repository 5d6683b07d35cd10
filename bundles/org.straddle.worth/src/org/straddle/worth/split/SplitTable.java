package org.straddle.worth.split;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.worth.EventWorth;
import org.straddle.worth.PlanWorth;
import org.straddle.worth.TurnChance;

/**
 * Who holds which square on which day: one row for each square of each stop, by square and time.
 *
 * @param squares what holds for a square in all
 */
public record SplitTable(List<Row> rows, List<OfSquare> squares) {

    /** A square is worked too often when its turns take more than this part of their worth from each other. Ours. */
    private static final double TOO_MUCH = 0.5;

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
     * @param lost   part of what its turns would bring each alone that they take from each other, 0 to 1
     */
    public record OfSquare(Square square, int passes, double served, double wanted, double lost) {

        /** Whether the turns mostly serve those who would be served anyway. */
        public boolean isWorkedTooOften() {
            return passes > 1 && lost > TOO_MUCH;
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
        Outlook outlook = worth.outlook();
        Itinerary plan = Itinerary.of(outlook.event());
        List<Row> rows = new ArrayList<>();
        for (Stay stay : plan.stays()) {
            Optional<PlanB> other = outlook.isPlaced(stay.site()) ? PlanB.of(stay, worth, plan) : Optional.empty();
            for (Square square : outlook.squares(stay.site())) {
                rows.add(new Row(square, stay.window().start().atZone(outlook.zone()).toLocalDate(), stay.team(), stay.site(),
                        stay, stay.turns().size(), other));
            }
        }
        rows.sort(Comparator.comparing(Row::square).thenComparing(row -> row.stay.window().start()));
        return new SplitTable(rows, squares(worth));
    }

    private static List<OfSquare> squares(EventWorth worth) {
        Map<Turn, TurnChance> turns = new HashMap<>(worth.turns());
        PlanWorth whole = worth.of(turns.values());
        List<OfSquare> all = new ArrayList<>();
        for (Square square : whole.squares()) {
            List<TurnChance> working = turns.values().stream().filter(turn -> turn.squares().contains(square)).toList();
            double adds = working.stream().mapToDouble(turn -> whole.served(square)
                    - worth.of(working.stream().filter(other -> other != turn).toList()).served(square)).sum();
            double alone = working.stream().mapToDouble(turn -> worth.of(List.of(turn)).served(square)).sum();
            if (!working.isEmpty() || whole.wanted(square) > 0) {
                all.add(new OfSquare(square, working.size(), whole.served(square), whole.wanted(square),
                        alone > 0 ? 1 - adds / alone : 0));
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
