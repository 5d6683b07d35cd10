package org.straddle.plan.problem;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The team orienteering problem with time windows, the public form of what the planner is at heart: some routes from
 * a depot and back, each vertex visited once at most, begun within its window, and as much score as possible.
 *
 * <p>The text form is the one in which the public instances are passed round: a line {@code k v N t}, a line that is not
 * used, then a line for each vertex, the depot first, with number, x, y, duration, score, two fields that are not used,
 * a list of as many numbers as the second of them says, opening and closing. The number of routes is not in it:
 * published tables vary it. Distances are Euclidean, cut after the first decimal for the instances derived from Solomon's,
 * whose positions are whole numbers, and after the second for those derived from Cordeau's, whose are not (format note that
 * comes with the instances).
 *
 * <p>A unit is 600 seconds of the planner's clock, so that both cuts are whole seconds.
 *
 * @param scores   by vertex; the depot, vertex 0, has none
 * @param times    by vertex: duration, opening, closing, in tenths of the unit
 * @param decimals of distances
 */
public record Orienteering(int routes, List<double[]> positions, List<Integer> scores, List<int[]> times, int decimals) {

    /** In seconds of the planner's clock. */
    private static final int TENTH = 60;

    /** Longer lists of vertices are no instance: the ways between all pairs would not fit into memory. */
    private static final int MOST_VERTICES = 2000;

    /** @throws IOException when the file cannot be read @throws IllegalArgumentException naming the line that is wrong */
    public static Orienteering read(Path file, int routes) throws IOException {
        if (Files.size(file) > 1 << 20) {
            throw new IllegalArgumentException(file + " is too large for an instance: " + Files.size(file) + " bytes");
        }
        return parse(Files.readString(file), routes);
    }

    /** @throws IllegalArgumentException naming the line that cannot be read */
    public static Orienteering parse(String text, int routes) {
        List<double[]> positions = new ArrayList<>();
        List<Integer> scores = new ArrayList<>();
        List<int[]> times = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int number = 2; number < lines.size() && positions.size() <= MOST_VERTICES; number++) {
            if (!lines.get(number).isBlank()) {
                double[] fields = fields(lines.get(number), number + 1);
                positions.add(new double[] { fields[1], fields[2] });
                scores.add((int) fields[4]);
                times.add(new int[] { tenths(fields[3]), tenths(fields[fields.length - 2]),
                    tenths(fields[fields.length - 1]) });
            }
        }
        if (positions.size() < 2 || positions.size() > MOST_VERTICES) {
            throw new IllegalArgumentException("an instance has a depot and up to " + (MOST_VERTICES - 1)
                    + " vertices, a line each after the first two lines; here are " + positions.size() + " lines");
        }
        boolean whole = positions.stream().flatMapToDouble(Arrays::stream).allMatch(x -> x == Math.rint(x));
        return new Orienteering(routes, positions, scores, times, whole ? 1 : 2);
    }

    private static double[] fields(String line, int number) {
        double[] fields;
        try {
            fields = Stream.of(line.trim().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("line " + number + " is no vertex: " + line, e);
        }
        boolean whole = fields.length >= 9 && IntStream.range(0, fields.length).allMatch(i -> Math.abs(fields[i]) < 1e5);
        if (!whole || fields[3] < 0 || fields[fields.length - 2] > fields[fields.length - 1]) {
            throw new IllegalArgumentException("line " + number + " is no vertex: " + line);
        }
        return fields;
    }

    private static int tenths(double units) {
        return (int) Math.round(10 * units);
    }

    /** In seconds of the planner's clock. */
    public int distance(int from, int to) {
        double scale = Math.pow(10, decimals);
        double cut = Math.floor(scale * Math.hypot(positions.get(from)[0] - positions.get(to)[0],
                positions.get(from)[1] - positions.get(to)[1]) + 1e-9);
        return (int) Math.round(cut * 10 * TENTH / scale);
    }

    /**
     * As a plan: vertices but the depot are sites with a square of their own, and a visit is a turn that serves everybody
     * who needs the square, as many as the score says. One bird serves all.
     */
    public PlanProblem problem() {
        int sites = positions.size() - 1;
        Service once = Service.of(1);
        List<Window> windows = IntStream.range(0, sites).mapToObj(site -> {
            int[] time = times.get(site + 1);
            return new Window(site, 0, time[1] * TENTH, time[2] * TENTH, time[0] * TENTH, once);
        }).toList();
        IntBinaryOperator seconds = (a, b) -> distance((a + 1) % (sites + 1), (b + 1) % (sites + 1));
        return new PlanProblem(IntStream.range(0, sites).mapToObj(List::of).toList(),
                Wants.ofOneGroup(scores.subList(1, sites + 1).stream().mapToDouble(Integer::doubleValue).toArray()),
                List.of(routes), IntStream.range(0, routes).mapToObj(team -> new PlanDay(team, times.get(0)[1] * TENTH,
                        times.get(0)[2] * TENTH, sites, sites, Integer.MAX_VALUE)).toList(),
                List.of(), List.of(), new RoadTable(sites + 1, seconds, seconds), new StationTimes(0, 0, 0), 0,
                BannedTimes.NONE, Commitments.NONE, windows);
    }

    /** The score of a plan, with every visit and every way reckoned anew from the instance. @throws IllegalStateException */
    public int score(List<Route> plan) {
        int score = 0;
        List<Integer> visited = new ArrayList<>();
        for (Route route : plan) {
            int at = 0;
            long free = times.get(0)[1] * (long) TENTH;
            for (Stay stay : route.stays()) {
                int vertex = stay.site() + 1;
                long begin = stay.turns().get(0).start();
                int[] of = times.get(vertex);
                if (free + distance(at, vertex) > begin || begin < of[1] * (long) TENTH || begin > of[2] * (long) TENTH
                        || visited.contains(vertex)) {
                    throw new IllegalStateException("vertex " + vertex + " is not visited as the instance allows");
                }
                visited.add(vertex);
                score += scores.get(vertex);
                at = vertex;
                free = begin + of[0] * (long) TENTH;
            }
            if (free + distance(at, 0) > times.get(0)[2] * (long) TENTH) {
                throw new IllegalStateException("a route is back too late");
            }
        }
        return score;
    }
}
