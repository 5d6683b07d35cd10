/**
 * Plans by large neighbourhood search, also called destroy and repair, or ruin and recreate:
 * {@link org.straddle.plan.search.NeighbourhoodSearch} takes a part of the plan out
 * ({@link org.straddle.plan.search.Removal}: destroy) and fills the gaps anew
 * ({@link org.straddle.plan.search.DayFill}, {@link org.straddle.plan.search.Refill}: repair). What is worse is accepted
 * now and then, as in simulated annealing.
 *
 * <p>P. Shaw: Using constraint programming and local search methods to solve vehicle routing problems. CP 1998, LNCS 1520,
 * 417-431. G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt, G. Dueck: Record breaking optimization results using the ruin and
 * recreate principle. Journal of Computational Physics 159 (2000) 139-171. D. Pisinger, S. Ropke: A general heuristic for
 * vehicle routing problems. Computers &amp; Operations Research 34 (2007) 2403-2435.
 */
package org.straddle.plan.search;
