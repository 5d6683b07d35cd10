package org.straddle.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The team orienteering problem with time windows, the public form of what the planner is at heart: some routes from
 * a depot and back, each vertex visited once at most, begun within its window, and as much score as possible.
 *
 * <p>The text form is the one in which instances are passed round (from memory): a line {@code k v N t}, a line that
 * is not used, then a line for each vertex, the depot first, with number, x, y, duration, score, three kinds of
 * fields that are not used ({@code f}, {@code a} and a list of {@code a} numbers), opening and closing. The number of
 * routes is {@code v}; published tables vary it, so it can be given. Distances are cut after the first decimal, as
 * is usual for instances derived from Solomon's.
 *
 * @param times as many as vertices: duration, opening, closing, in tenths of the unit
 */
record Orienteering(int routes, List<double[]> positions, List<Integer> scores, List<int[]> times) {

    /** A tenth of the unit is a step of the planner's clock, so that nothing is rounded. */
    private static final int TENTH = StationTimes.STEP;

    /** @throws IllegalArgumentException naming the line that cannot be read */
    static Orienteering parse(String text, int routes) {
        List<double[]> positions = new ArrayList<>();
        List<Integer> scores = new ArrayList<>();
        List<int[]> times = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int number = 2; number < lines.size(); number++) {
            if (lines.get(number).isBlank()) {
                continue;
            }
            try {
                double[] f = Stream.of(lines.get(number).trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
                positions.add(new double[] { f[1], f[2] });
                scores.add((int) f[4]);
                times.add(new int[] { tenths(f[3]), tenths(f[f.length - 2]), tenths(f[f.length - 1]) });
            } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
                throw new IllegalArgumentException("Line " + (number + 1) + " is no vertex: " + lines.get(number), e);
            }
        }
        return new Orienteering(routes, positions, scores, times);
    }

    private static int tenths(double units) {
        return (int) Math.round(10 * units);
    }

    int distanceTenths(int from, int to) {
        return (int) (10 * Math.hypot(positions.get(from)[0] - positions.get(to)[0],
                positions.get(from)[1] - positions.get(to)[1]) + 1e-9);
    }

    /**
     * As a plan: vertices but the depot are sites with a square of their own, a visit is a turn, and every tenth of
     * the unit at which it may begin is a chance. One bird serves all.
     */
    PlanProblem problem() {
        int sites = positions.size() - 1;
        List<Chance> chances = new ArrayList<>();
        for (int site = 0; site < sites; site++) {
            int[] time = times.get(site + 1);
            for (int start = time[1]; start <= time[2]; start++) {
                chances.add(new Chance(site, 0, start * TENTH, Math.max(start * TENTH + 1, (start + time[0]) * TENTH)));
            }
        }
        PlanDay route = new PlanDay(0, times.get(0)[1] * TENTH, times.get(0)[2] * TENTH, sites, sites, Integer.MAX_VALUE);
        RoadTable roads = new RoadTable(sites + 1,
                (a, b) -> TENTH * distanceTenths((a + 1) % (sites + 1), (b + 1) % (sites + 1)),
                (a, b) -> TENTH * distanceTenths((a + 1) % (sites + 1), (b + 1) % (sites + 1)));
        return new PlanProblem(IntStream.range(0, sites).mapToObj(List::of).toList(),
                scores.subList(1, sites + 1).stream().map(Integer::doubleValue).toList(), new Tiers(List.of(1.0)),
                List.of(routes), IntStream.range(0, routes).mapToObj(team -> new PlanDay(team, route.from(), route.until(),
                        sites, sites, route.drivingLimit())).toList(),
                chances, Collections.emptyList(), roads, new StationTimes(0, 0, 0), 0);
    }
}
