/**
 * Plans by large neighbourhood search, also called destroy and repair, or ruin and recreate:
 * <ul>
 * <li>{@link org.straddle.plan.search.NeighbourhoodSearch} leads it: take a part of the plan out, fill it anew, keep what is
 * better, and within a temperature that falls what is a little worse (simulated annealing, in cycles that grow).
 * <li>{@link org.straddle.plan.search.Removal} (destroy) takes out a day, some hours, neighbours, strings of stops, what stands
 * in the way of a pass. {@link org.straddle.plan.search.AdaptiveChoice} prefers what helped lately.
 * <li>{@link org.straddle.plan.search.DayFill} (repair) fills a day: where the work is passes by
 * {@link org.straddle.plan.search.Refill}, a dynamic programme over the passes of a gap; where it may begin at any time of a
 * window by {@link org.straddle.plan.search.Insertion}, with forward slack. {@link org.straddle.plan.search.Taste} makes
 * the repair err on purpose.
 * <li>{@link org.straddle.plan.search.RoutePool} keeps routes of good plans; {@code plan.bound} combines them.
 * <li>{@link org.straddle.plan.search.Exchange} answers what it would cost to work a square that is left out,
 * {@link org.straddle.plan.search.FullStops} tops up stops at the end.
 * </ul>
 *
 * <p>P. Shaw: Using constraint programming and local search methods to solve vehicle routing problems. CP 1998, LNCS 1520,
 * 417-431. G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck: Record breaking optimization results using the ruin and
 * recreate principle. Journal of Computational Physics 159 (2000) 139-171. S. Ropke, D. Pisinger: An adaptive large
 * neighborhood search heuristic for the pickup and delivery problem with time windows. Transportation Science 40 (2006)
 * 455-472 (choice among removals). D. Pisinger, S. Ropke: A general heuristic for vehicle routing problems. Computers &amp;
 * Operations Research 34 (2007) 2403-2435. J. Christiaens, G. Vanden Berghe: Slack induction by string removals for vehicle
 * routing problems. Transportation Science 54 (2020) 417-433 (strings, blinks). P. Vansteenwegen, W. Souffriau, G. Vanden
 * Berghe, D. Van Oudheusden: Iterated local search for the team orienteering problem with time windows. Computers &amp;
 * Operations Research 36 (2009) 3281-3290 (insertion).
 */
package org.straddle.plan.search;
