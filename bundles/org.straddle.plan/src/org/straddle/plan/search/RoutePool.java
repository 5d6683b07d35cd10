package org.straddle.plan.search;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.straddle.plan.problem.Route;

/** Routes of good plans, for plans that take one from here and one from there; the oldest go. */
final class RoutePool {

    private static final int MOST = 60;

    private final Set<Route> routes = new LinkedHashSet<>();

    void add(List<Route> plan) {
        for (Route route : plan) {
            routes.remove(route);
            routes.add(route);
        }
        Iterator<Route> oldest = routes.iterator();
        while (routes.size() > MOST) {
            oldest.next();
            oldest.remove();
        }
    }

    List<Route> routes() {
        return List.copyOf(routes);
    }
}
