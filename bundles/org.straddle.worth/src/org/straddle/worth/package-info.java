/**
 * What a plan is worth: how many chasers it is expected to serve with a square that they needed.
 *
 * <p>{@link org.straddle.worth.EventWorth} is where to ask. It knows the {@link org.straddle.worth.ChaserGroup}s of an event
 * and makes a {@link org.straddle.worth.TurnChance} of every turn: minutes, quality, callers, the chance that it happens, and
 * for each group the probability that somebody who needs the square gets it. A {@link org.straddle.worth.PlanWorth} adds up
 * many of them: a chaser who was served once needs the square no more, so with probabilities p the share served is
 * 1 − Π(1 − p). In the amounts −ln(1 − p), which add up, that is concave: what comes later never brings more.
 *
 * <p>All constants are policies of the event ({@link org.straddle.worth.WorthFigures}); the defaults are ours.
 */
package org.straddle.worth;
