package org.straddle.daysheet.fits;

import org.straddle.outlook.itinerary.PlanRule;

/**
 * What would be wrong with a stop or turn at a place.
 *
 * @param rule     id of the rule that would find it
 * @param sentence short, for a line that changes with every move of the hand
 */
public record Obstacle(String rule, String sentence) {

    Obstacle(PlanRule rule, String sentence) {
        this(rule.id(), sentence);
    }
}
