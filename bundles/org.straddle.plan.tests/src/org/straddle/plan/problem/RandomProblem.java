package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Invented problems of any size, the same for the same seed. Places lie in a plane, driven at 60 km/h. */
public final class RandomProblem {

    private static final int MINUTE = 60;

    private final Random random;
    private final int teams;
    private final int daysPerTeam;
    private final int sites;
    private final int birds;
    private final int passesPerBirdAndDay;
    private final double side;
    private final int groups;

    private RandomProblem(long seed, int teams, int daysPerTeam, int sites, int birds, int passesPerBirdAndDay,
            double sideMinutes) {
        random = new Random(seed);
        this.teams = teams;
        this.daysPerTeam = daysPerTeam;
        this.sites = sites;
        this.birds = birds;
        this.passesPerBirdAndDay = passesPerBirdAndDay;
        side = sideMinutes;
        groups = 1 + random.nextInt(3);
    }

    /** At most two teams and seven chances: small enough to try everything. */
    public static PlanProblem tiny(long seed) {
        return tiny(seed, 3);
    }

    /** The same with so few sites that teams stay long. */
    public static PlanProblem tinyAtTwoSites(long seed) {
        return tiny(seed, 2);
    }

    private static PlanProblem tiny(long seed, int sites) {
        PlanProblem whole = new RandomProblem(seed, 1 + (int) (seed % 2), 1, sites, 2, 2, 60).make();
        return new PlanProblem(whole.squaresOfSite(), whole.wants(), whole.teamsAtOnce(),
                whole.days(), whole.chances().subList(0, Math.min(7, whole.chances().size())), List.of(),
                whole.roads(), whole.times(), whole.drivingPricePerHour());
    }

    /** The same with the stops pinned that its days would have; those may leave a day impossible to drive. */
    public static PlanProblem tinyWithFixed(long seed) {
        PlanProblem whole = new RandomProblem(seed, 1 + (int) (seed % 2), 1, 3, 2, 2, 60).make();
        return new PlanProblem(whole.squaresOfSite(), whole.wants(), whole.teamsAtOnce(),
                whole.days(), whole.chances().subList(0, Math.min(6, whole.chances().size())), whole.fixed(),
                whole.roads(), whole.times(), whole.drivingPricePerHour());
    }

    /** A problem with bans of every kind and with commitments, for some of which the bans leave no room. */
    public static PlanProblem withBansAndCommitments(PlanProblem whole, long seed) {
        Random random = new Random(seed + 1000);
        List<PlanDay> days = new ArrayList<>();
        List<BannedTimes.Closed> closed = new ArrayList<>();
        List<BannedTimes.Silent> silent = new ArrayList<>();
        List<Commitment> commitments = new ArrayList<>();
        for (int day = 0; day < whole.days().size(); day++) {
            PlanDay out = whole.days().get(day);
            List<PlanDay.Pause> pauses = new ArrayList<>();
            for (int ban = whole.chances().isEmpty() ? 0 : random.nextInt(4); ban > 0; ban--) {
                Chance hit = whole.chances().get(random.nextInt(whole.chances().size()));
                int from = hit.start() - random.nextInt(60 * MINUTE);
                int until = hit.start() + random.nextInt(60 * MINUTE);
                int site = hit.site();
                int kind = random.nextInt(4);
                if (kind == 0 && pauses.isEmpty() && from < until) {
                    pauses.add(new PlanDay.Pause(from, until));
                    for (int each = 0; each < whole.siteCount(); each++) {
                        closed.add(new BannedTimes.Closed(day, each, from, until));
                    }
                } else if (kind == 1) {
                    silent.add(new BannedTimes.Silent(day, site, hit.bird(), from, until));
                } else {
                    closed.add(new BannedTimes.Closed(day, site, from, until));
                }
            }
            days.add(new PlanDay(out.team(), out.from(), out.until(), out.startPlace(), out.endPlace(),
                    out.drivingLimit(), pauses));
            for (int commitment = 0; commitment < 3 && !whole.chances().isEmpty(); commitment++) {
                commitments.add(new Commitment(day, whole.chances().get(random.nextInt(whole.chances().size())),
                        0.05 + random.nextDouble() / 2));
            }
        }
        return new PlanProblem(whole.squaresOfSite(), whole.wants(), whole.teamsAtOnce(), days,
                whole.chances(), whole.fixed(), whole.roads(), whole.times(), whole.drivingPricePerHour(),
                new BannedTimes(closed, silent), new Commitments(commitments));
    }

    /** The same where a team may be at a site for no more than some hours. */
    public static PlanProblem withRelief(PlanProblem whole, long seed) {
        Random random = new Random(seed + 2000);
        return whole.with(new Relief((40 + random.nextInt(60)) * MINUTE, (60 + random.nextInt(180)) * MINUTE));
    }

    public static PlanProblem small(long seed) {
        Random size = new Random(-seed);
        return new RandomProblem(seed, 1 + size.nextInt(4), 1 + size.nextInt(2), 3 + size.nextInt(10),
                1 + size.nextInt(5), 3, 150).make();
    }

    public static PlanProblem of(long seed, int teams, int daysPerTeam, int sites, int birds) {
        return new RandomProblem(seed, teams, daysPerTeam, sites, birds, 3, 400).make();
    }

    private PlanProblem make() {
        int squares = Math.max(1, sites * 2 / 3);
        int bases = 2;
        double[] x = random.doubles(sites + bases, 0, side).toArray();
        double[] y = random.doubles(sites + bases, 0, side).toArray();
        RoadTable roads = new RoadTable(sites + bases,
                (a, b) -> (int) Math.ceil(MINUTE * Math.hypot(x[a] - x[b], y[a] - y[b])),
                (a, b) -> {
                    double minutes = Math.hypot(x[a] - x[b], y[a] - y[b]);
                    return (int) Math.ceil(MINUTE * (minutes + 15 * Math.floor(minutes / 120)));
                });
        StationTimes times = new StationTimes(random.nextInt(16) * MINUTE, random.nextInt(11) * MINUTE,
                random.nextInt(5) * MINUTE);
        List<PlanDay> days = days(bases);
        List<List<Integer>> squaresOfSite = IntStream.range(0, sites).mapToObj(site -> squares(squares)).toList();
        double[][] needed = IntStream.range(0, squares).mapToObj(q -> IntStream.range(0, groups)
                .mapToDouble(group -> demand() / groups).toArray()).toArray(double[][]::new);
        return new PlanProblem(squaresOfSite, new Wants(needed, groups),
                IntStream.range(0, birds).mapToObj(bird -> 1 + random.nextInt(2)).toList(), days, chances(), fixed(days, times),
                roads, times, 0.02);
    }

    /** Now and then a turn serves a group for sure, or not at all. */
    private Service service() {
        return Service.of(IntStream.range(0, groups).mapToDouble(group -> switch (random.nextInt(8)) {
            case 0 -> 0;
            case 1 -> 1;
            default -> 0.7 * random.nextDouble();
        }).toArray());
    }

    private double demand() {
        return random.nextInt(5) == 0 ? 0 : random.nextDouble();
    }

    private List<Integer> squares(int squares) {
        int count = Math.min(squares, new int[] { 1, 1, 2, 4 }[random.nextInt(4)]);
        return random.ints(0, squares).distinct().limit(count).boxed().toList();
    }

    private List<PlanDay> days(int bases) {
        List<PlanDay> days = new ArrayList<>();
        for (int team = 0; team < teams; team++) {
            for (int day = 0; day < daysPerTeam; day++) {
                int from = day * 24 * 60 + 6 * 60 + random.nextInt(120);
                int until = from + 240 + random.nextInt(480);
                int start = random.nextInt(8) == 0 ? RoadTable.NOWHERE : sites + random.nextInt(bases);
                days.add(new PlanDay(team, from * MINUTE, until * MINUTE, start, sites + random.nextInt(bases),
                        (60 + random.nextInt(400)) * MINUTE));
            }
        }
        return days;
    }

    /** Each bird passes all sites at nearly the same times, as real ones do. */
    private List<Chance> chances() {
        List<Chance> chances = new ArrayList<>();
        for (int day = 0; day < daysPerTeam; day++) {
            for (int bird = 0; bird < birds; bird++) {
                for (int pass = 0; pass < passesPerBirdAndDay; pass++) {
                    int about = (day * 24 * 60 + 6 * 60 + random.nextInt(12 * 60)) * MINUTE;
                    for (int site = 0; site < sites; site++) {
                        if (random.nextInt(5) > 0) {
                            int start = about + random.nextInt(150);
                            chances.add(new Chance(site, bird, start, start + 240 + random.nextInt(600), service()));
                        }
                    }
                }
            }
        }
        Collections.shuffle(chances, random);
        return chances;
    }

    private List<FixedStay> fixed(List<PlanDay> days, StationTimes times) {
        List<FixedStay> fixed = new ArrayList<>();
        for (int day = 0; day < days.size(); day++) {
            if (random.nextInt(4) == 0) {
                PlanDay route = days.get(day);
                int site = random.nextInt(sites);
                int arrival = route.from() + 120 * MINUTE;
                int start = arrival + times.setUp() + 7;
                Chance turn = new Chance(site, random.nextInt(birds), start, start + 400, service());
                fixed.add(new FixedStay(day, site, arrival, arrival + 70 * MINUTE,
                        random.nextBoolean() ? List.of(turn) : List.of()));
            }
        }
        return fixed;
    }
}
