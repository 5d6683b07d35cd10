/**
 * From an event to numbers and back. {@link org.straddle.plan.event.EventNumbers} counts its things,
 * {@link org.straddle.plan.event.EventProblem} is the question in numbers, {@link org.straddle.plan.event.EventPlanner} has it
 * answered. {@link org.straddle.plan.event.Changes} and {@link org.straddle.plan.event.Uncovered} say what the answer means, and
 * {@link org.straddle.plan.event.ApplyProposal} puts it into the event.
 */
package org.straddle.plan.event;
