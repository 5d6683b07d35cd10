/**
 * Who holds which square when, and what to do about places that may fail: the {@link org.straddle.worth.split.SplitTable} of a
 * plan, a {@link org.straddle.worth.split.PlanB} for each stop, and the {@link org.straddle.worth.split.ToDo} before departure.
 */
package org.straddle.worth.split;
