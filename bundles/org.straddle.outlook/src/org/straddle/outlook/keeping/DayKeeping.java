package org.straddle.outlook.keeping;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.straddle.outlook.keeping.Course.Halt;
import org.straddle.outlook.keeping.Course.Way;

/**
 * How likely the turns of one day are kept. The team leaves its base in time; it is late at a stop by how late it left and
 * by how much longer the drive took than there is time; a turn is kept when the station is up as it begins. Then the team
 * stays until its planned departure, or until it has set up and taken down if it came too late for that.
 *
 * @param chances of the turns, 0 to 1, in order of the stops and then of time
 * @param whole   chance that all of them are kept
 * @param gains   for each stop, how many more turns would be expected to be kept if somebody knew the drive there; 0 where
 *                somebody does
 */
record DayKeeping(List<Double> chances, double whole, List<Double> gains) {

    /** Nobody is later than this at the end of a day. */
    private static final Duration EVER = Duration.ofDays(1);

    static DayKeeping of(Course course) {
        List<Double> chances = new ArrayList<>();
        List<Double> gains = new ArrayList<>();
        List<Integer> firstTurns = new ArrayList<>();
        Delay late = Delay.none();
        Delay allKept = Delay.none();
        for (int i = 0; i < course.halts().size(); i++) {
            Halt halt = course.halts().get(i);
            gains.add(expectedIfKnown(course, i, late));
            firstTurns.add(chances.size());
            late = halt.arrived(late);
            allKept = halt.arrived(allKept);
            for (Duration turn : halt.turns()) {
                chances.add(late.chance(turn));
                allKept = allKept.within(turn);
            }
            late = halt.left(late);
            allKept = halt.left(allKept);
        }
        for (int i = 0; i < gains.size(); i++) {
            double known = gains.get(i);
            gains.set(i, Double.isNaN(known) ? 0 : known - expected(chances.subList(firstTurns.get(i), chances.size())));
        }
        return new DayKeeping(List.copyOf(chances), allKept.chance(EVER), List.copyOf(gains));
    }

    /** The chances of the turns alone, which is quicker. */
    static List<Double> chances(Course course) {
        return chances(course.halts(), Delay.none());
    }

    private static List<Double> chances(List<Halt> halts, Delay before) {
        List<Double> chances = new ArrayList<>();
        Delay late = before;
        for (Halt halt : halts) {
            late = halt.arrived(late);
            for (Duration turn : halt.turns()) {
                chances.add(late.chance(turn));
            }
            late = halt.left(late);
        }
        return chances;
    }

    /** Turns expected to be kept from a stop on if somebody knew the drive there; not a number where somebody does. */
    private static double expectedIfKnown(Course course, int stop, Delay before) {
        Halt halt = course.halts().get(stop);
        if (halt.way().flatMap(Way::known).isEmpty()) {
            return Double.NaN;
        }
        Way way = halt.way().get();
        List<Halt> rest = new ArrayList<>(course.halts().subList(stop, course.halts().size()));
        rest.set(0, halt.by(new Way(way.over(), way.known().get(), way.known())));
        return expected(chances(rest, before));
    }

    private static double expected(List<Double> chances) {
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        return sum;
    }
}
