package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The moments at which as many chances of one bird as can be lie over each other. A plan that lets no more teams
 * work the bird at these moments than it allows does so at every moment (chances are intervals, and intervals that
 * meet in pairs meet in one point).
 *
 * <p>Numbers of chances are those of the {@link ChanceTable}.
 */
public final class BirdMoments {

    private final List<Moment> moments = new ArrayList<>();
    private final List<List<Integer>> momentsOfChance = new ArrayList<>();
    private final boolean[] blocked;

    /**
     * @param room    how many teams can work the bird then, besides those with fixed turns
     * @param chances which are in the air then
     */
    public record Moment(int bird, int second, int room, List<Integer> chances) {
    }

    public BirdMoments(PlanProblem problem, ChanceTable table) {
        blocked = new boolean[table.size()];
        List<List<Integer>> ofBird = new ArrayList<>();
        problem.teamsAtOnce().forEach(bird -> ofBird.add(new ArrayList<>()));
        for (int c = 0; c < table.size(); c++) {
            ofBird.get(table.chance(c).bird()).add(c);
            momentsOfChance.add(new ArrayList<>());
        }
        for (int bird = 0; bird < ofBird.size(); bird++) {
            addMoments(problem, table, bird, ofBird.get(bird));
        }
    }

    private void addMoments(PlanProblem problem, ChanceTable table, int bird, List<Integer> chances) {
        List<Chance> fixed = problem.fixed().stream().flatMap(stay -> stay.turns().stream())
                .filter(turn -> turn.bird() == bird).toList();
        if (fixed.isEmpty() && problem.teamsAtOnce().get(bird) >= teams(problem)) {
            return; // there are never more
        }
        TreeSet<Integer> starts = new TreeSet<>();
        chances.forEach(c -> starts.add(table.chance(c).start()));
        fixed.forEach(turn -> starts.add(turn.start()));
        List<Integer> before = List.of();
        int roomBefore = Integer.MAX_VALUE;
        int secondBefore = 0;
        List<Integer> running = new ArrayList<>();
        int next = 0;
        for (int second : starts) {
            while (next < chances.size() && table.chance(chances.get(next)).start() <= second) {
                running.add(chances.get(next++));
            }
            running.removeIf(c -> table.chance(c).end() <= second);
            int room = Math.max(0, problem.teamsAtOnce().get(bird)
                    - (int) fixed.stream().filter(turn -> turn.start() <= second && second < turn.end()).count());
            if (room < roomBefore || !running.containsAll(before)) {
                add(bird, secondBefore, roomBefore, before);
            }
            before = List.copyOf(running);
            roomBefore = room;
            secondBefore = second;
        }
        add(bird, secondBefore, roomBefore, before);
    }

    private static long teams(PlanProblem problem) {
        return problem.days().stream().mapToInt(PlanDay::team).distinct().count();
    }

    private void add(int bird, int second, int room, List<Integer> chances) {
        if (room == 0) {
            chances.forEach(c -> blocked[c] = true);
        } else if (chances.size() > room) {
            chances.forEach(c -> momentsOfChance.get(c).add(moments.size()));
            moments.add(new Moment(bird, second, room, chances));
        }
    }

    public List<Moment> all() {
        return moments;
    }

    /** Positions in {@link #all()}. */
    public List<Integer> of(int chance) {
        return momentsOfChance.get(chance);
    }

    /** Whether fixed turns leave no room for this chance. */
    public boolean isBlocked(int chance) {
        return blocked[chance];
    }
}
