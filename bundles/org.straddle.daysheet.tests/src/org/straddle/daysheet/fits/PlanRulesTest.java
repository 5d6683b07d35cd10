package org.straddle.daysheet.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.straddle.daysheet.RandomRove;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.PlanRule;

/**
 * The day sheet knows every rule that a plan may not break: in events full of trouble, stops and turns that are held over
 * all lanes and hours meet each of them. That it judges as the rule does is held by {@link FittingPlacesTest}.
 */
class PlanRulesTest {

    private static final int EVENTS = 8;
    private static final int PLACES = 12;

    @Test
    void everyRuleIsMetBySomeStopOrTurnInHand() {
        Set<String> met = new HashSet<>();
        for (long seed = 1; seed <= EVENTS; seed++) {
            Event event = RandomRove.withCrews(seed);
            event.getBirds().get(0).setState(BirdState.NOT_WORKING);
            Outlook outlook = Outlook.of(event, null);
            Random random = new Random(seed);
            for (Stop stop : event.getPlan().getStops()) {
                Carried.stop(outlook, stop, Grip.WHOLE).ifPresent(carried -> meet(event, carried, random, met));
                for (Turn turn : stop.getTurns()) {
                    Carried.turn(outlook, turn, Grip.WHOLE).ifPresent(carried -> meet(event, carried, random, met));
                }
            }
        }
        EnumSet<PlanRule> unknown = EnumSet.allOf(PlanRule.class);
        unknown.removeIf(rule -> met.contains(rule.id()));
        assertEquals(EnumSet.noneOf(PlanRule.class), unknown, "the day sheet knows nothing of these");
    }

    /** Where it is, and at random in all lanes. */
    private static void meet(Event event, Carried carried, Random random, Set<String> met) {
        for (Team team : event.getTeams()) {
            for (int i = 0; i < PLACES; i++) {
                Landing landing = carried.land(team, carried.window().start().plusSeconds(random.nextInt(40_000) * (i % 3 - 1L)));
                met.addAll(landing.obstacles().stream().map(Obstacle::rule).collect(Collectors.toSet()));
            }
        }
    }
}
