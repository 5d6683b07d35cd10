package org.straddle.plan.problem;

/**
 * A turn that a day is expected to work.
 *
 * @param worth of working exactly this chance on this day, not negative
 */
public record Commitment(int day, Chance chance, double worth) {
}
