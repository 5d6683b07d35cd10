package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A plan while it is being made: who is where when, kept together with what follows from it and what every
 * further stay has to be asked against: who of those that need a square is not served yet, stays that hold a square, turns that
 * hold a bird. Stays come and go as wholes.
 */
public final class Roster {

    private static final Comparator<Stay> BY_ARRIVAL =
            Comparator.comparingInt(Stay::arrival).thenComparingInt(Stay::departure);

    private final PlanProblem problem;
    private final List<List<Stay>> byDay = new ArrayList<>();
    private final List<Stay> outsideDays = new ArrayList<>();
    private final int groups;
    private final int[] worked;
    private final double[][] left;
    private final double[] served;
    private final List<List<Stay>> holdsOfSquare = new ArrayList<>();
    private final List<List<Chance>> turnsOfBird = new ArrayList<>();

    /** Holds the fixed stays and nothing else. */
    public Roster(PlanProblem problem) {
        this.problem = problem;
        groups = problem.groupCount();
        worked = new int[problem.squareCount()];
        left = new double[problem.squareCount()][groups];
        served = new double[problem.squareCount()];
        Arrays.stream(left).forEach(ofSquare -> Arrays.fill(ofSquare, 1));
        problem.days().forEach(day -> byDay.add(new ArrayList<>()));
        IntStream.range(0, problem.squareCount()).forEach(square -> holdsOfSquare.add(new ArrayList<>()));
        problem.teamsAtOnce().forEach(bird -> turnsOfBird.add(new ArrayList<>()));
        problem.fixed().forEach(fixed -> add(Stay.of(fixed, List.of())));
    }

    public PlanProblem problem() {
        return problem;
    }

    /** The stays of a day by arrival; a live view. */
    public List<Stay> day(int day) {
        return byDay.get(day);
    }

    /** Every stay, by day and arrival, those outside all days last. */
    public List<Stay> stays() {
        List<Stay> all = new ArrayList<>();
        byDay.forEach(all::addAll);
        all.addAll(outsideDays);
        return all;
    }

    public void add(Stay stay) {
        List<Stay> lane = laneOf(stay);
        lane.add(stay);
        lane.sort(BY_ARRIVAL);
        for (int square : problem.squaresOfSite().get(stay.site())) {
            worked[square] += stay.turnCount();
            holdsOfSquare.get(square).add(stay);
            reckon(square);
        }
        stay.turns().forEach(turn -> turnsOfBird.get(turn.bird()).add(turn));
        stay.fixedTurns().forEach(turn -> turnsOfBird.get(turn.bird()).add(turn));
    }

    public void remove(Stay stay) {
        if (!laneOf(stay).remove(stay)) {
            throw new IllegalArgumentException("not in the plan: " + stay);
        }
        for (int square : problem.squaresOfSite().get(stay.site())) {
            worked[square] -= stay.turnCount();
            holdsOfSquare.get(square).remove(stay);
            reckon(square);
        }
        stay.turns().forEach(turn -> turnsOfBird.get(turn.bird()).remove(turn));
        stay.fixedTurns().forEach(turn -> turnsOfBird.get(turn.bird()).remove(turn));
    }

    /** Anew each time: to divide a stay out again would let roundings pile up. */
    private void reckon(int square) {
        double[] ofSquare = left[square];
        Arrays.fill(ofSquare, 1);
        for (Stay stay : holdsOfSquare.get(square)) {
            double[] ofStay = stay.unserved(groups);
            for (int g = 0; g < groups; g++) {
                ofSquare[g] *= ofStay[g];
            }
        }
        double sum = 0;
        for (int g = 0; g < groups; g++) {
            sum += problem.wants().of(square, g) * (1 - ofSquare[g]);
        }
        served[square] = sum;
    }

    /** How many of a group need a square and are not expected to be served with it. */
    public double owed(int square, int group) {
        return problem.wants().of(square, group) * left[square][group];
    }

    private List<Stay> laneOf(Stay stay) {
        return stay.day() == FixedStay.NO_DAY ? outsideDays : byDay.get(stay.day());
    }

    /** Takes a stay out; of a fixed one only the turns that are not fixed. */
    public void clear(Stay stay) {
        remove(stay);
        stay.fixed().ifPresent(fixed -> add(Stay.of(fixed, List.of())));
    }

    /** Replaces the stays of a day by others. */
    public void restore(int day, List<Stay> stays) {
        List.copyOf(byDay.get(day)).forEach(this::remove);
        stays.forEach(this::add);
    }

    /** Passes worked from a square. */
    public int worked(int square) {
        return worked[square];
    }

    /** Stays that hold a square; a live view in no order. */
    public List<Stay> holdsOf(int square) {
        return holdsOfSquare.get(square);
    }

    /**
     * Whether as many turns as the bird allows lie in the time of this chance. It counts those that follow
     * each other as if they were at once: stricter than the rule on birds that several teams share, and
     * quick.
     */
    public boolean birdIsTaken(Chance chance) {
        int free = problem.teamsAtOnce().get(chance.bird());
        for (Chance turn : turnsOfBird.get(chance.bird())) {
            if (turn.overlaps(chance) && --free <= 0) {
                return true;
            }
        }
        return free <= 0;
    }

    /** What a plan is made for: squares' worth less the price of driving, and what kept commitments are worth. */
    public double worth() {
        double worth = committed();
        for (double ofSquare : served) {
            worth += ofSquare;
        }
        for (int day = 0; day < byDay.size(); day++) {
            worth -= problem.drivingPricePerHour() * drivingSeconds(day) / 3600;
        }
        return worth;
    }

    /** The part of the worth that comes from kept commitments. */
    public double committed() {
        double committed = 0;
        for (int day = 0; day < byDay.size() && !problem.commitments().isEmpty(); day++) {
            committed += route(day).committed(problem);
        }
        return committed;
    }

    /** What the plan would lose in worth without a stay, the driving for it saved; commitments do not count. */
    public double gain(Stay stay) {
        double driving = stay.day() == FixedStay.NO_DAY ? 0
                : problem.drivingPricePerHour() * detourSeconds(stay) / 3600;
        return gain(stay, List.of()) - driving;
    }

    /** What the plan would lose in worth without one turn of a stay, which may be a fixed one. */
    public double gain(Stay stay, Chance turn) {
        List<Chance> others = new ArrayList<>(stay.turns());
        others.addAll(stay.fixedTurns());
        others.remove(turn);
        return gain(stay, others);
    }

    /** What the plan would lose if a stay worked only these turns. */
    private double gain(Stay stay, List<Chance> turns) {
        double[] reduced = Stay.unserved(turns, groups);
        double gain = 0;
        for (int square : problem.squaresOfSite().get(stay.site())) {
            double[] others = new double[groups];
            Arrays.fill(others, 1);
            for (Stay other : holdsOfSquare.get(square)) {
                if (other != stay) {
                    double[] ofStay = other.unserved(groups);
                    for (int g = 0; g < groups; g++) {
                        others[g] *= ofStay[g];
                    }
                }
            }
            for (int g = 0; g < groups; g++) {
                gain += problem.wants().of(square, g) * (others[g] * reduced[g] - left[square][g]);
            }
        }
        return gain;
    }

    private int detourSeconds(Stay stay) {
        List<Stay> without = new ArrayList<>(byDay.get(stay.day()));
        without.remove(stay);
        return drivingSeconds(stay.day()) - new Route(stay.day(), without).drivingSeconds(problem);
    }

    /** Driving of one team on one day, without breaks. */
    public int drivingSeconds(int day) {
        return route(day).drivingSeconds(problem);
    }

    /** The present day of a team. */
    public Route route(int day) {
        return new Route(day, byDay.get(day));
    }

    /** See {@link Route#canBeDriven}. */
    public boolean canBeDriven(int day) {
        return route(day).canBeDriven(problem);
    }
}
