package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lets a team stay where it is between two stops at the same site, unless somebody else needs the site or one of its
 * squares meanwhile or the team would need relief. The search makes every stay as short as it can, because room for others is what it is short of;
 * people would not pack up only to set up again on the same spot.
 */
public final class JoinedStays {

    private JoinedStays() {
    }

    public static void join(Roster roster) {
        for (int day = 0; day < roster.problem().days().size(); day++) {
            List<Stay> stays = List.copyOf(roster.day(day));
            for (int next = 1; next < stays.size(); next++) {
                Stay before = stays.get(next - 1);
                Stay after = stays.get(next);
                if (before.site() == after.site() && before.fixed().isEmpty() && after.fixed().isEmpty()
                        && isFree(roster, before, after)) {
                    List<Stay> fewer = new ArrayList<>(stays);
                    fewer.remove(next);
                    fewer.set(next - 1, joined(before, after));
                    if (new Route(day, fewer).keepsRelief(roster.problem())) {
                        roster.remove(before);
                        roster.remove(after);
                        roster.add(fewer.get(next - 1));
                        stays = fewer;
                        next--;
                    }
                }
            }
        }
    }

    private static Stay joined(Stay before, Stay after) {
        List<Chance> turns = new ArrayList<>(before.turns());
        turns.addAll(after.turns());
        return new Stay(before.day(), before.site(), before.arrival(), after.departure(), turns, Optional.empty());
    }

    private static boolean isFree(Roster roster, Stay before, Stay after) {
        return roster.problem().banned().before(before.day(), before.site(), before.departure(), after.arrival()) != BannedTimes.BANNED
                && roster.problem().squaresOfSite().get(before.site()).stream()
                .flatMap(square -> roster.holdsOf(square).stream())
                .noneMatch(other -> other != before && other != after
                        && other.overlaps(before.departure(), after.arrival()));
    }
}
