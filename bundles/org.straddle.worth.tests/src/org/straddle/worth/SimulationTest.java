package org.straddle.worth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.straddle.grid.Square;
import org.straddle.model.WorkMode;

/**
 * Lives through ten thousand days of a plan, person by person: birds fail, teams come too late, sites cannot be used, some
 * callers turn up and some of them are worked. The mean number of people who got a square they needed must agree with the
 * computed worth within the sampling error. It knows nothing of products of probabilities.
 */
class SimulationTest {

    private static final int DAYS = 10_000;

    /** Beyond four standard errors lies one result of 16,000 (normal distribution). */
    private static final double STANDARD_ERRORS = 4;

    /** What the simulation is told of a turn. */
    private record Lived(List<Square> squares, double[] share, double bird, double happens, double usable, double worked) {
    }

    private final WorthFigures usual = Example.USUAL;
    private final Random random = new Random(5);

    private TurnChance turn(List<Square> squares, double share, double otherShare, double minutes, WorkMode mode, double bird,
            double usable) {
        return Example.turn(new TreeSet<>(squares), new GroupMinutes(share * minutes, share, minutes),
                new GroupMinutes(otherShare * minutes, otherShare, minutes), mode, bird, usable);
    }

    @Test
    void aPlanServesAsManyAsItsWorthSays() {
        List<Square> both = List.of(Example.NEAR, Example.FAR);
        List<TurnChance> turns = List.of(turn(both, 1, 0.5, 7, WorkMode.FM, 0.95, 1), turn(both, 0.8, 0.9, 11, WorkMode.FM, 0.9, 1),
                turn(List.of(Example.NEAR), 0.3, 1, 6, WorkMode.LINEAR, 0.6, 0.6), turn(List.of(Example.FAR), 1, 0.2, 9, WorkMode.FM, 0.5, 0.6),
                turn(both, 0, 1, 3, WorkMode.DATA, 0.4, 1));
        double computed = Example.plan(turns.toArray(TurnChance[]::new)).served();
        double sum = 0;
        double squares = 0;
        for (int day = 0; day < DAYS; day++) {
            int served = day(turns.stream().map(this::lived).toList());
            sum += served;
            squares += (double) served * served;
        }
        double mean = sum / DAYS;
        double error = Math.sqrt((squares / DAYS - mean * mean) / DAYS);
        assertEquals(computed, mean, STANDARD_ERRORS * error, "standard error " + error);
        assertTrue(error < 0.02 * computed, "too rough to tell anything: " + error + " of " + computed);
    }

    /** Callers in reach are counted anew from the groups, so that no sum of the worth is trusted. */
    private Lived lived(TurnChance turn) {
        double callers = 0;
        double minutes = 0;
        double[] share = new double[Example.GROUPS.size()];
        for (int g = 0; g < share.length; g++) {
            share[g] = turn.groups().get(g).share();
            double needing = people(g) * (turn.squares().size() == 2 ? 1 - 0.1 * 0.5 : turn.squares().contains(Example.NEAR) ? 0.9 : 0.5);
            double ofGroup = usual.callers() * share[g] * needing;
            callers += ofGroup;
            minutes += share[g] > 0 ? ofGroup * turn.groups().get(g).minutes() / share[g] : 0;
        }
        double contacts = turn.contacts() / turn.minutes() * minutes / callers;
        return new Lived(new ArrayList<>(turn.squares()), share, turn.bird(), turn.happens(), turn.usable(),
                Math.min(1, contacts / callers));
    }

    private static int people(int group) {
        return group == 0 ? 60 : 40;
    }

    private int day(List<Lived> planned) {
        List<Lived> turns = planned.stream().filter(turn -> random.nextDouble() < turn.bird
                && random.nextDouble() < turn.happens && random.nextDouble() < turn.usable).toList();
        int served = 0;
        for (int group = 0; group < Example.GROUPS.size(); group++) {
            for (Square square : List.of(Example.NEAR, Example.FAR)) {
                // Whole people who need it: 54 and 30 of the one group, 36 and 20 of the other.
                boolean[] has = new boolean[(int) Math.round(people(group) * (square.equals(Example.NEAR) ? 0.9 : 0.5))];
                for (Lived turn : turns) {
                    if (turn.squares.contains(square)) {
                        served += during(turn, group, has);
                    }
                }
            }
        }
        return served;
    }

    private int during(Lived turn, int group, boolean[] has) {
        int served = 0;
        for (int person = 0; person < has.length; person++) {
            boolean calls = random.nextDouble() < turn.share[group] && random.nextDouble() < usual.callers();
            if (calls && random.nextDouble() < turn.worked && !has[person]) {
                has[person] = true;
                served++;
            }
        }
        return served;
    }
}
