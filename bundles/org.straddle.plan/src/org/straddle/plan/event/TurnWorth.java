package org.straddle.plan.event;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.plan.problem.Tiers;

/**
 * What a turn adds to a plan as it stands: what the plan would lose without it. The more passes are worked from a square,
 * the less each of them adds.
 *
 * @param parts one for each square that the turn's site claims, in order
 */
public record TurnWorth(List<Part> parts) {

    /**
     * What it adds in one square.
     *
     * @param demand share of chasers that still need the square, 0 to 1
     * @param worked passes that the plan works from the square, this one with them
     * @param adds   the part of the demand that would be lost without this pass, 0 to 1
     */
    public record Part(Square square, double demand, int worked, double adds) {
    }

    /** @param turn of the outlook's event */
    public static TurnWorth of(Outlook outlook, Turn turn) {
        Site site = turn.eContainer() instanceof Stop stop ? stop.getSite() : null;
        if (site == null) {
            return new TurnWorth(List.of());
        }
        Tiers tiers = new Tiers(outlook.policies().repeatWorths());
        Set<Square> squares = outlook.squares(site);
        return new TurnWorth(squares.stream().map(square -> {
            int worked = worked(outlook, square);
            double demand = outlook.demand(square);
            return new Part(square, demand, worked,
                    demand * (tiers.upTo(worked) - tiers.upTo(Math.max(0, worked - 1))));
        }).toList());
    }

    /** What so many more passes from a site would add to the plan as it stands, in all its squares together. */
    public static double ofMore(Outlook outlook, Site site, int passes) {
        Tiers tiers = new Tiers(outlook.policies().repeatWorths());
        return outlook.squares(site).stream().mapToDouble(square -> {
            int worked = worked(outlook, square);
            return outlook.demand(square) * (tiers.upTo(worked + passes) - tiers.upTo(worked));
        }).sum();
    }

    /** In all squares together, in the unit of a plan's worth: 1 is a square that every chaser needs, worked once. */
    public double adds() {
        return parts.stream().mapToDouble(Part::adds).sum();
    }

    private static int worked(Outlook outlook, Square square) {
        return (int) turns(outlook).filter(turn -> squares(outlook, turn).contains(square)).count();
    }

    private static Stream<Turn> turns(Outlook outlook) {
        return outlook.event().getPlan() == null ? Stream.empty()
                : outlook.event().getPlan().getStops().stream().flatMap(stop -> stop.getTurns().stream())
                        .filter(turn -> turn.getBird() != null);
    }

    private static Set<Square> squares(Outlook outlook, Turn turn) {
        Site site = ((Stop) turn.eContainer()).getSite();
        return site == null ? Set.of() : outlook.squares(site);
    }
}
