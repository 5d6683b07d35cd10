package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Road;
import org.straddle.outlook.Outlook;
import org.straddle.plan.problem.RoadTable;

/**
 * The places of an event by number, in the order of the {@link RoadTable}: sites, bases, and then points on the road
 * where a team is when a plan is made while it drives. From such a point it may go on or turn back, whichever way is
 * shorter: that is more than the straight way, so it can be driven.
 */
final class Places {

    private final List<Site> sites;
    private final List<Base> bases;
    private final int[][] driving;
    private final int[][] total;
    private final List<OnTheRoad> points = new ArrayList<>();

    Places(Outlook outlook) {
        Event event = outlook.event();
        sites = List.copyOf(event.getSites());
        bases = List.copyOf(event.getBases());
        List<Identified> named = new ArrayList<>(sites);
        named.addAll(bases);
        HoldFigures figures = HoldFigures.of(event.getPolicies());
        driving = new int[named.size()][named.size()];
        total = new int[named.size()][named.size()];
        for (int from = 0; from < driving.length; from++) {
            for (int to = 0; to < driving.length; to++) {
                Optional<Road> road = from == to ? Optional.empty() : outlook.road(named.get(from), named.get(to));
                driving[from][to] = road.map(Road::driving).map(EventChances::clockSeconds).orElse(0);
                total[from][to] = road.map(known -> DriveTime.of(known, figures).planned(figures)).map(EventChances::clockSeconds).orElse(0);
            }
        }
    }

    /**
     * A point on the road from one place to another.
     *
     * @param place         its number
     * @param passedSeconds since it left, at most what the drive takes
     */
    record OnTheRoad(int place, int from, int to, int passedSeconds, int drivenSeconds) {
    }

    boolean knows(Site site) {
        return sites.contains(site);
    }

    int of(Site site) {
        return sites.indexOf(site);
    }

    int of(Base base) {
        return sites.size() + bases.indexOf(base);
    }

    int drivingSeconds(int from, int to) {
        return from == RoadTable.NOWHERE || to == RoadTable.NOWHERE ? 0 : driving[from][to];
    }

    int totalSeconds(int from, int to) {
        return from == RoadTable.NOWHERE || to == RoadTable.NOWHERE ? 0 : total[from][to];
    }

    /** A new place: so long after a team left one place for another. At its end it is the other place. */
    OnTheRoad onTheRoad(int from, int to, int passedSeconds) {
        int passed = Math.min(passedSeconds, totalSeconds(from, to));
        int driven = Math.min(passed, drivingSeconds(from, to));
        boolean there = from == RoadTable.NOWHERE || passed == totalSeconds(from, to);
        OnTheRoad point = new OnTheRoad(there ? to : driving.length + points.size(), from, to, passed, driven);
        if (!there) {
            points.add(point);
        }
        return point;
    }

    /** With all points on the road so far. A place without a position is as near as none. */
    RoadTable roads() {
        return new RoadTable(driving.length + points.size(), (from, to) -> seconds(driving, from, to, false),
                (from, to) -> seconds(total, from, to, true));
    }

    private int seconds(int[][] table, int from, int to, boolean breaks) {
        if (to >= table.length) {
            return 0; // nobody goes there
        }
        if (from < table.length) {
            return table[from][to];
        }
        OnTheRoad point = points.get(from - table.length);
        int passed = breaks ? point.passedSeconds : point.drivenSeconds;
        int back = passed + table[point.from][to];
        int on = Math.max(0, table[point.from][point.to] - passed) + table[point.to][to];
        // By way of the other place no break may be due that is due on the straight way: whoever checks sees that one.
        return Math.max(Math.min(back, on), table[point.from][to] - passed);
    }
}
