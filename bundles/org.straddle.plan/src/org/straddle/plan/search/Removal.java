package org.straddle.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.PlanDay;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.RoadTable;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.problem.Stay;

/**
 * Ways to take a part out of a plan so that it can be filled anew. Each opens another kind of door: stops
 * that are close in place can swap teams, stops close in time can swap birds, a whole day can turn round.
 */
enum Removal {

    /** All of one team's day. */
    ONE_DAY {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            return List.copyOf(roster.day(randomDay(roster, random)));
        }
    },

    /** All of two teams' days. */
    TWO_DAYS {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            int one = randomDay(roster, random);
            int other = randomDay(roster, random);
            List<Stay> chosen = new ArrayList<>(roster.day(one));
            if (other != one) {
                chosen.addAll(roster.day(other));
            }
            return chosen;
        }
    },

    /** Part of one team's day. */
    PART_OF_DAY {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            int day = randomDay(roster, random);
            PlanDay route = roster.problem().days().get(day);
            int length = (route.until() - route.from()) / (2 + random.nextInt(4));
            int from = route.from() + random.nextInt(Math.max(1, route.until() - route.from() - length));
            return roster.day(day).stream().filter(stay -> stay.overlaps(from, from + length)).toList();
        }
    },

    /** What all teams do in some hours. */
    HOURS {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            PlanDay route = roster.problem().days().get(randomDay(roster, random));
            int length = 3600 + random.nextInt(4 * 3600);
            int from = route.from() + random.nextInt(Math.max(1, route.until() - route.from()));
            return freeStays(roster).filter(stay -> stay.overlaps(from, from + length)).toList();
        }
    },

    /** The stops nearest to one. */
    NEIGHBOURS {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            List<Stay> all = freeStays(roster).toList();
            if (all.isEmpty()) {
                return all;
            }
            int site = all.get(random.nextInt(all.size())).site();
            RoadTable roads = roster.problem().roads();
            return all.stream().sorted(Comparator.comparingInt(stay -> roads.totalSeconds(site, stay.site())))
                    .limit(2 + random.nextInt(5)).toList();
        }
    },

    /** In every day the stops one after the other around the one that is nearest to a site. */
    STRINGS {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            List<Stay> all = freeStays(roster).toList();
            if (all.isEmpty()) {
                return all;
            }
            int site = all.get(random.nextInt(all.size())).site();
            int longest = 1 + random.nextInt(MOST_IN_STRING);
            List<Stay> chosen = new ArrayList<>();
            for (int day = 0; day < roster.problem().days().size(); day++) {
                List<Stay> stays = roster.day(day);
                if (!stays.isEmpty()) {
                    int nearest = nearest(roster.problem().roads(), stays, site);
                    int from = Math.max(0, nearest - random.nextInt(longest));
                    chosen.addAll(stays.subList(from, Math.min(stays.size(), from + longest)));
                }
            }
            return chosen;
        }

        private int nearest(RoadTable roads, List<Stay> stays, int site) {
            int nearest = 0;
            for (int i = 1; i < stays.size(); i++) {
                if (roads.totalSeconds(site, stays.get(i).site()) < roads.totalSeconds(site, stays.get(nearest).site())) {
                    nearest = i;
                }
            }
            return nearest;
        }
    },

    /** Stops from here and there. */
    SCATTERED {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            double share = 0.1 + 0.2 * random.nextDouble();
            return freeStays(roster).filter(stay -> random.nextDouble() < share).toList();
        }
    },

    /** Whatever stands in the way of one pass that nobody works yet, and what its team does around then. */
    WANTED_PASS {
        @Override
        List<Stay> choose(Roster roster, Random random) {
            PlanProblem problem = roster.problem();
            if (problem.chances().isEmpty()) {
                return List.of();
            }
            Chance wanted = problem.chances().get(random.nextInt(problem.chances().size()));
            int day = randomDay(roster, random);
            return freeStays(roster).filter(stay -> inTheWay(problem, stay, wanted)
                    || stay.day() == day && stay.overlaps(wanted.start() - 7200, wanted.end() + 7200)).toList();
        }

        private boolean inTheWay(PlanProblem problem, Stay stay, Chance wanted) {
            boolean sameSquare = problem.squaresOfSite().get(stay.site()).stream()
                    .anyMatch(problem.squaresOfSite().get(wanted.site())::contains);
            return sameSquare && stay.overlaps(wanted.start() - 3600, wanted.end() + 3600)
                    || stay.turns().stream().anyMatch(turn -> turn.bird() == wanted.bird() && turn.overlaps(wanted));
        }
    };

    private static final int MOST_IN_STRING = 10;

    /** Stays to take out; fixed ones lose only their turns that are not fixed. */
    abstract List<Stay> choose(Roster roster, Random random);

    private static int randomDay(Roster roster, Random random) {
        return random.nextInt(roster.problem().days().size());
    }

    private static Stream<Stay> freeStays(Roster roster) {
        return roster.stays().stream().filter(stay -> stay.fixed().isEmpty() || !stay.turns().isEmpty());
    }
}
