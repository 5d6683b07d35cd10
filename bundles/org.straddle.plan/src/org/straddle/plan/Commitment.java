package org.straddle.plan;

/**
 * A turn that a day is expected to work.
 *
 * @param worth of working exactly this chance on this day, not negative
 */
record Commitment(int day, Chance chance, double worth) {
}
