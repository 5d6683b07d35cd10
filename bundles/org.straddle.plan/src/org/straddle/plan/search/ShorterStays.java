package org.straddle.plan.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.Gap;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Cuts stays that are longer than a team may be at one stop down to their best part, and lets the team use the time that
 * becomes free elsewhere. The search knows no such limit, so the bound holds without it and stays valid. Fixed stays, and
 * stays whose turns were told to others, are left as they are.
 */
public final class ShorterStays {

    /** A day that is filled anew may get another long stay. */
    private static final int ROUNDS = 4;

    private final Roster roster;
    private final PlanProblem problem;
    private final ChanceTable table;
    private final Refill refill;
    private final int longest;

    private ShorterStays(Roster roster, int longest) {
        this.roster = roster;
        this.longest = longest;
        problem = roster.problem();
        table = new ChanceTable(problem);
        refill = new Refill(problem, table);
    }

    /** @param longest seconds from arrival to departure */
    public static void cut(Roster roster, int longest) {
        if (roster.stays().stream().allMatch(stay -> isShort(stay, longest))) {
            return;
        }
        ShorterStays shorter = new ShorterStays(roster, longest);
        for (int day = 0; day < roster.problem().days().size(); day++) {
            double[] whim = Taste.plain(roster.problem()).whim().clone();
            for (int round = 0; round < ROUNDS && shorter.cutDay(day, whim); round++) {
                shorter.useFreeTime(day, whim);
            }
            shorter.cutDay(day, whim);
        }
    }

    private static boolean isShort(Stay stay, int longest) {
        return stay.fixed().isPresent() || stay.departure() - stay.arrival() <= longest;
    }

    /** @param whim of what is not to be worked any more becomes zero */
    private boolean cutDay(int day, double[] whim) {
        boolean any = false;
        for (Stay stay : List.copyOf(roster.day(day))) {
            Optional<Stay> part = isShort(stay, longest) ? Optional.empty() : bestPart(stay);
            if (part.isPresent()) {
                roster.remove(stay);
                roster.add(part.get());
                for (int c = 0; c < whim.length; c++) {
                    whim[c] = table.chance(c).site() == stay.site() ? 0 : whim[c];
                }
                any = true;
            }
        }
        return any;
    }

    /** The turns in a row that are worth most and fit; none when even one does not, or when a promise would be broken. */
    private Optional<Stay> bestPart(Stay stay) {
        double committed = roster.committed();
        Stay best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (int from = 0; from < stay.turns().size(); from++) {
            for (int until = stay.turns().size(); until > from; until--) {
                List<Chance> turns = stay.turns().subList(from, until);
                Stay part = Stay.around(stay.day(), turns, problem.times());
                if (part.departure() - part.arrival() <= longest) {
                    roster.remove(stay);
                    roster.add(part);
                    double worth = roster.committed() < committed ? Double.NEGATIVE_INFINITY : roster.worth();
                    roster.remove(part);
                    roster.add(stay);
                    if (worth > most) {
                        most = worth;
                        best = part;
                    }
                    // Fewer turns from the same first one are worth less.
                    break;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private void useFreeTime(int day, double[] whim) {
        double[] favour = new double[problem.siteCount()];
        Arrays.fill(favour, 1);
        Taste elsewhere = new Taste(favour, whim, problem.drivingPricePerHour(), false, Insertion.Order.MOST_FOR_TIME, null);
        List<Stay> before = List.copyOf(roster.day(day));
        double worth = roster.worth();
        for (Gap gap : Gap.between(problem, day, roster.day(day))) {
            refill.fill(roster, gap, elsewhere).forEach(roster::add);
        }
        if (roster.worth() < worth || !roster.canBeDriven(day)) {
            roster.restore(day, before);
        }
    }
}
