/**
 * The planning problem in numbers: no model, no sky, no clock. At heart it is the team orienteering problem with time
 * windows: some teams, each with a start, an end and a time limit, visit places that may be visited at certain times, and
 * the collected worth is to be as large as possible. It differs in what is collected: turns within a stop, whose worth falls
 * with what was collected before.
 *
 * <p>I.-M. Chao, B. L. Golden, E. A. Wasil: The team orienteering problem. European Journal of Operational Research 88
 * (1996) 464-474. P. Vansteenwegen, W. Souffriau, G. Vanden Berghe, D. Van Oudheusden: Iterated local search for the
 * team orienteering problem with time windows. Computers &amp; Operations Research 36 (2009) 3281-3290.
 *
 * <p>What can be worked is either {@link org.straddle.plan.problem.Chance}s, passes that begin when they begin, as in every
 * event, or {@link org.straddle.plan.problem.Window}s, work that may begin at any time of a window, as in the public form of
 * the problem, which {@link org.straddle.plan.problem.Orienteering} reads. Both are planned by the same search.
 *
 * <p>{@link org.straddle.plan.problem.PlanProblem} is the question, {@link org.straddle.plan.problem.Roster} a plan while
 * it is made, {@link org.straddle.plan.problem.Route} one team's day.
 */
package org.straddle.plan.problem;
