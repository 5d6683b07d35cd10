/**
 * The planner as others call it: what is asked ({@link org.straddle.plan.PlanSettings}, {@link org.straddle.plan.Replan},
 * {@link org.straddle.plan.WhatIf}), what is answered ({@link org.straddle.plan.Proposal}), and who answers
 * ({@link org.straddle.plan.Planner}). Values only; nothing here knows how a plan is found.
 *
 * <p>The rooms behind it, each of which knows only those before it:
 * <ul>
 * <li>{@code plan.problem}: the planning problem in numbers, a variant of the team orienteering problem with time windows;
 * <li>{@code plan.search}: plans by destroy and repair (large neighbourhood search);
 * <li>{@code plan.bound}: an upper bound for all plans by column generation, and plans mixed from its columns;
 * <li>{@code plan.event}: an event to numbers and back, and the planner that puts all of it together.
 * </ul>
 */
package org.straddle.plan;
