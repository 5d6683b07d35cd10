package org.straddle.worth.split;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.straddle.model.Site;
import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.worth.EventWorth;
import org.straddle.worth.ExpectedPlan;
import org.straddle.worth.SiteReadiness;
import org.straddle.worth.TurnChance;

/**
 * What to settle before departure at a site of the plan.
 *
 * @param lacks   what is missing
 * @param first   when a team arrives there first
 * @param unlocks how many more chasers the plan is expected to serve once all of that is settled
 */
public record ToDo(Site site, Set<SiteReadiness.Lack> lacks, Instant first, double unlocks) {

    public ToDo {
        lacks = Set.copyOf(lacks);
    }

    /** Of the plan of the event, what unlocks most first. */
    public static List<ToDo> of(ExpectedPlan expected) {
        EventWorth worth = expected.worth();
        Map<Site, Instant> first = new LinkedHashMap<>();
        Map<Site, Set<SiteReadiness.Lack>> lacks = new LinkedHashMap<>();
        Itinerary plan = Itinerary.of(worth.outlook().event());
        for (Stay stay : plan.stays()) {
            SiteReadiness readiness = worth.readiness(stay.site(), stay.window().start());
            if (!readiness.isReady()) {
                first.putIfAbsent(stay.site(), stay.window().start());
                lacks.computeIfAbsent(stay.site(), any -> EnumSet.noneOf(SiteReadiness.Lack.class)).addAll(readiness.lacks());
            }
        }
        Map<Turn, TurnChance> now = expected.turns();
        double served = expected.served().served();
        List<ToDo> all = new ArrayList<>();
        lacks.forEach((site, missing) -> {
            List<TurnChance> settled = new ArrayList<>();
            plan.turns().forEach(work -> {
                TurnChance turn = now.get(work.turn());
                settled.add(work.site() == site ? ready(turn, worth) : turn);
            });
            all.add(new ToDo(site, missing, first.get(site), worth.of(settled).served() - served));
        });
        all.sort(Comparator.comparingDouble(ToDo::unlocks).reversed().thenComparing(ToDo::first));
        return all;
    }

    /** The chance that it happens takes up what was lost because the site may fail. */
    private static TurnChance ready(TurnChance turn, EventWorth worth) {
        return turn.usable() > 0 ? turn.happening(turn.happens() / turn.usable(), worth.figures()) : turn;
    }
}
