package org.straddle.outlook.itinerary;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;

/** What two stays at one time have against each other: a team is in one place, and a place or square has one team. */
public final class Company {

    private Company() {
    }

    /** The rule that both break together; empty when they are at different times or may both be. */
    public static Optional<PlanRule> broken(Outlook outlook, Stay a, Stay b) {
        if (!a.window().overlaps(b.window())) {
            return Optional.empty();
        } else if (a.team() == b.team()) {
            return Optional.of(PlanRule.STOPS_OVERLAP);
        } else if (a.site() == b.site()) {
            return Optional.of(PlanRule.SAME_SITE);
        }
        return share(outlook, a.site(), b.site()) ? Optional.of(PlanRule.SAME_SQUARE) : Optional.empty();
    }

    /** Whether two sites can hold only one team between them. */
    public static boolean compete(Outlook outlook, Site a, Site b) {
        return a == b || share(outlook, a, b);
    }

    /** The squares that stations at two sites would both work from. */
    public static SortedSet<Square> common(Outlook outlook, Site a, Site b) {
        SortedSet<Square> common = new TreeSet<>(outlook.squares(a));
        common.retainAll(outlook.squares(b));
        return common;
    }

    private static boolean share(Outlook outlook, Site a, Site b) {
        return !Collections.disjoint(outlook.squares(a), outlook.squares(b));
    }
}
