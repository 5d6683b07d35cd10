package org.straddle.daysheet.fits;

/**
 * What would be wrong with a stop or turn at a place.
 *
 * @param rule     id of the rule that would find it
 * @param sentence short, for a line that changes with every move of the hand
 */
public record Obstacle(String rule, String sentence) {
}
