package org.straddle.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A team's day in plain numbers, and a simulation that lives through it person by person: drives take as long as they take,
 * teams come too late, birds and sites fail, some of those who need a square call and some callers are worked. It knows
 * nothing of the program: elevations, minutes, quality, callers and delays are its own arithmetic.
 *
 * @param leavesFrom earliest minute of the day at which the team leaves
 */
record LivedPlan(List<Person> people, List<Stop> stops, int leavesFrom) {

    static final double SET_UP = 15;
    static final double TAKE_DOWN = 10;
    static final double TURNS_UP = 0.3;
    static final double FM_A_MINUTE = 1.2;
    static final double LINEAR_A_MINUTE = 0.7;
    static final double REACHED_FROM_DEG = 5;
    static final double FULL_FROM_DEG = 20;
    static final double LOW = 0.3;
    static final double KNOWN_SPREAD = 0.07;
    static final double COMPUTED_SPREAD = 0.15;

    /** Four normally distributed drives of five take no more than the mean and so many deviations (tables of the distribution). */
    private static final double PLANNED_DEVIATIONS = 0.8416;

    /** WGS 84: equatorial radius, km, and square of the eccentricity. */
    private static final double EARTH_KM = 6378.137;
    private static final double ECCENTRICITY_2 = 0.00669437999014;

    /** A satellite that turns with the Earth: (GM · (sidereal day / 2π)²)^(1/3), km. */
    private static final double STILL_KM = 42_164.17;

    /** Longitude above which all birds stand, degrees. */
    static final double BIRDS_DEG = 10;

    /** Somebody who follows the event. @param needs squares by number */
    record Person(double latitudeDeg, double longitudeDeg, List<Integer> needs) {
    }

    /**
     * A stop; minutes of the day.
     *
     * @param drive usual time of the drive there
     * @param known whether somebody timed the drive
     */
    record Stop(double drive, boolean known, int arrival, int departure, double usable, List<Integer> squares, List<Turn> turns) {
    }

    /** @param works chance that the bird works */
    record Turn(int start, int minutes, boolean fm, int bird, double works) {
    }

    /** How far the simulation leaves what the program assumes. */
    enum World {
        /** A bird or a site may fail in one turn and work in the next, and whoever needs a square calls in every turn. */
        EACH_TURN_BY_ITSELF,
        /** What fails once fails all day; who has the square calls no more; a station works whole callers, up to its capacity. */
        AS_PEOPLE_ARE
    }

    /** Elevation of the birds for somebody, degrees: the angle between the local vertical and the line to the bird. */
    static double elevationDeg(double latitudeDeg, double longitudeDeg) {
        double latitude = Math.toRadians(latitudeDeg);
        double east = Math.toRadians(longitudeDeg - BIRDS_DEG);
        double normal = EARTH_KM / Math.sqrt(1 - ECCENTRICITY_2 * Math.pow(Math.sin(latitude), 2));
        double[] up = {Math.cos(latitude) * Math.cos(east), Math.cos(latitude) * Math.sin(east), Math.sin(latitude)};
        double[] toBird = {STILL_KM - normal * up[0], -normal * up[1], -normal * (1 - ECCENTRICITY_2) * up[2]};
        double along = up[0] * toBird[0] + up[1] * toBird[1] + up[2] * toBird[2];
        return Math.toDegrees(Math.asin(along / Math.sqrt(toBird[0] * toBird[0] + toBird[1] * toBird[1] + toBird[2] * toBird[2])));
    }

    /** Of everybody's end of a contact. */
    private double[] qualities() {
        return people.stream().mapToDouble(LivedPlan::quality).toArray();
    }

    /** Stations stand below the birds: the person's end has it worse. */
    private static double quality(Person person) {
        double elevationDeg = elevationDeg(person.latitudeDeg, person.longitudeDeg);
        if (elevationDeg <= REACHED_FROM_DEG) {
            return 0;
        }
        return Math.min(1, LOW + (1 - LOW) * (elevationDeg - REACHED_FROM_DEG) / (FULL_FROM_DEG - REACHED_FROM_DEG));
    }

    private static boolean isReached(double quality, Turn turn) {
        return quality * turn.minutes >= 1;
    }

    /** Mean and standard error of the contacts with a needed square, over days. */
    double[] served(int days, long seed, World world) {
        Random random = new Random(seed);
        double[] qualities = qualities();
        double sum = 0;
        double squares = 0;
        for (int day = 0; day < days; day++) {
            int served = day(random, world, qualities);
            sum += served;
            squares += (double) served * served;
        }
        double mean = sum / days;
        return new double[] {mean, Math.sqrt((squares / days - mean * mean) / days)};
    }

    private int day(Random random, World world, double[] qualities) {
        boolean[][] has = new boolean[people.size()][10];
        double[] birdFate = random.doubles(10).toArray();
        double[] siteFate = random.doubles(stops.size()).toArray();
        Stop first = stops.get(0);
        double leaving = Math.max(leavesFrom, first.arrival - first.drive * (1 + spread(first) * PLANNED_DEVIATIONS));
        int served = 0;
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            double ready = leaving + stop.drive * (1 + spread(stop) * random.nextGaussian()) + SET_UP;
            for (Turn turn : stop.turns) {
                boolean apart = world == World.EACH_TURN_BY_ITSELF;
                boolean works = (apart ? random.nextDouble() : birdFate[turn.bird]) < turn.works;
                boolean usable = (apart ? random.nextDouble() : siteFate[i]) < stop.usable;
                if (ready <= turn.start && works && usable) {
                    served += apart ? eachByLuck(stop, turn, has, random, qualities)
                            : wholeCallers(stop, turn, has, random, qualities);
                }
            }
            leaving = Math.max(stop.departure, ready + TAKE_DOWN);
        }
        return served;
    }

    private static double spread(Stop stop) {
        return stop.known ? KNOWN_SPREAD : COMPUTED_SPREAD;
    }

    private static boolean needsAny(Person person, Stop stop) {
        return stop.squares.stream().anyMatch(person.needs::contains);
    }

    /** Everybody who turns up is worked with the same luck: contacts that fit over callers that one expects. */
    private int eachByLuck(Stop stop, Turn turn, boolean[][] has, Random random, double[] qualities) {
        double callers = 0;
        double minutes = 0;
        boolean[] calls = new boolean[people.size()];
        for (int i = 0; i < calls.length; i++) {
            calls[i] = isReached(qualities[i], turn) && needsAny(people.get(i), stop);
            if (calls[i]) {
                callers += TURNS_UP;
                minutes += TURNS_UP * qualities[i] * turn.minutes;
            }
        }
        double luck = Math.min(1, contacts(turn, minutes / callers) / callers);
        int served = 0;
        for (int i = 0; i < calls.length; i++) {
            if (calls[i] && random.nextDouble() < TURNS_UP && random.nextDouble() < luck) {
                served += give(people.get(i), stop, has[i]);
            }
        }
        return served;
    }

    private static double contacts(Turn turn, double minutes) {
        return (turn.fm ? FM_A_MINUTE : LINEAR_A_MINUTE) * minutes;
    }

    /** Those who still need a square call, in random order, until the time is over. */
    private int wholeCallers(Stop stop, Turn turn, boolean[][] has, Random random, double[] qualities) {
        List<Integer> calling = new ArrayList<>();
        double quality = 0;
        for (int i = 0; i < people.size(); i++) {
            int person = i;
            if (isReached(qualities[i], turn)
                    && stop.squares.stream().anyMatch(square -> people.get(person).needs.contains(square) && !has[person][square])
                    && random.nextDouble() < TURNS_UP) {
                calling.add(i);
                quality += qualities[i];
            }
        }
        if (calling.isEmpty()) {
            return 0;
        }
        double fit = contacts(turn, turn.minutes * quality / calling.size());
        int whole = (int) fit + (random.nextDouble() < fit - (int) fit ? 1 : 0);
        int served = 0;
        for (int n = 0; n < whole && !calling.isEmpty(); n++) {
            int person = calling.remove(random.nextInt(calling.size()));
            served += give(people.get(person), stop, has[person]);
        }
        return served;
    }

    private static int give(Person person, Stop stop, boolean[] has) {
        int served = 0;
        for (int square : stop.squares) {
            if (person.needs.contains(square) && !has[square]) {
                has[square] = true;
                served++;
            }
        }
        return served;
    }
}
