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
 *
 * <p>Where to look for what: destroy operators in {@code search.Removal}, repair in {@code search.Refill} (passes) and
 * {@code search.Insertion} (windows, forward slack), acceptance and cycles in {@code search.NeighbourhoodSearch}, the restricted
 * master in {@code bound.RouteMaster}, pricing in {@code bound.RoutePricing} (passes) and {@code bound.WindowPricing} (windows),
 * recombination in {@code bound.PlanMix}, search and bound beside each other in {@code bound.BoundedSearch}, public instances in
 * {@code problem.Orienteering}.
 */
package org.straddle.plan;
