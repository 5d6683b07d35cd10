package org.straddle.plan.bound;

import java.util.Collection;
import java.util.List;
import java.util.Set;

import org.straddle.plan.problem.Route;

/**
 * What a branch of a {@link BranchTree} settles about one day: that it visits one of some sites at least, or none of them.
 * Either of the two holds for every plan.
 *
 * @param sites one, or all from which a square is worked
 */
record Decision(int day, Set<Integer> sites, boolean visits) {

    Decision {
        sites = Set.copyOf(sites);
    }

    /** What holds for all other plans. */
    Decision opposite() {
        return new Decision(day, sites, !visits);
    }

    /** Whether a route keeps to it; those of other days do. */
    boolean allows(Route route) {
        return route.day() != day || visits == meets(route);
    }

    /** Whether a route visits one of the sites. */
    private boolean meets(Route route) {
        return route.stays().stream().anyMatch(stay -> sites.contains(stay.site()));
    }

    /** Whether a route keeps to all of them. */
    static boolean allow(Collection<Decision> decisions, Route route) {
        return decisions.stream().allMatch(decision -> decision.allows(route));
    }

    /** Those about one day. */
    static List<Decision> of(int day, Collection<Decision> decisions) {
        return decisions.stream().filter(decision -> decision.day == day).toList();
    }
}
