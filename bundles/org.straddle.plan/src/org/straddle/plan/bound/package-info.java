/**
 * An upper bound for all plans by column generation (Dantzig-Wolfe decomposition), and plans made of its columns.
 *
 * <ul>
 * <li>{@link org.straddle.plan.bound.RouteMaster} is the <em>restricted master problem</em>: a linear programme whose columns
 * are whole days of one team. Its dual values are the {@link org.straddle.plan.bound.Prices}. The share served of a square is
 * concave in the amounts of all routes: it is bounded by {@link org.straddle.plan.bound.Cut}s (<em>cutting planes</em>), each in a form
 * that is concave in the amount of every single route as well.
 * <li>{@link org.straddle.plan.bound.Pricing} is the <em>pricing problem</em>: the best day at given prices. Where work is
 * passes, {@link org.straddle.plan.bound.RoutePricing} solves it by
 * <em>label setting with dominance</em> ({@link org.straddle.plan.bound.Labels},
 * {@link org.straddle.plan.bound.LabelFront}) over chances in the order of time. What a visit of one site is paid is bounded by
 * {@link org.straddle.plan.bound.StopPay}: several linearizations, each solved exactly. A label has two values, one with visits
 * paid each by itself, one with the squares of several visits paid jointly, and the lower counts. A label remembers of its way only what
 * turned out to matter ({@link org.straddle.plan.bound.Memory}): the <em>ng-route relaxation</em> with memories that grow,
 * which can only raise the bound. {@link org.straddle.plan.bound.ReliefPricing} asks it twice where teams need relief. Where work may begin at any time of a window,
 * {@link org.straddle.plan.bound.WindowPricing} does, with {@link org.straddle.plan.bound.CompletionBounds}; for one route it
 * often proves the best there is (<em>decremental state space relaxation</em>).
 * <li>{@link org.straddle.plan.bound.ColumnGeneration} leads the two. Its bound is the <em>Lagrangian bound</em>, which is
 * valid at any prices, so there is one after every round. Prices are <em>smoothed</em>: newest ones leap.
 * <li>{@link org.straddle.plan.bound.BranchTree} parts all plans in two, again and again, by a {@link org.straddle.plan.bound.Decision}
 * where a mix of routes is worth more than any plan (<em>branch and price</em>). The highest bound of its
 * {@link org.straddle.plan.bound.Node}s holds for all plans.
 * <li>{@link org.straddle.plan.bound.PlanMix} chooses among the columns found, in whole numbers, by constraint programming: a
 * <em>restricted master heuristic</em>.
 * <li>{@link org.straddle.plan.bound.BoundedSearch} runs bound and search beside each other.
 * </ul>
 *
 * <p>J. E. Kelley: The cutting-plane method for solving convex programs. SIAM 8 (1960) 703-712. C. Barnhart, E. L. Johnson, G. L. Nemhauser, M. W. P. Savelsbergh, P. H. Vance: Branch-and-price: column generation for
 * solving huge integer programs. Operations Research 46 (1998) 316-329. M. Desrochers, J. Desrosiers, M. Solomon: A new
 * optimization algorithm for the vehicle routing problem with time windows. Operations Research 40 (1992) 342-354 (label
 * setting). D. Feillet, P. Dejax, M. Gendreau, C. Gueguen: An exact algorithm for the elementary shortest path problem with
 * resource constraints. Networks 44 (2004) 216-229 (dominance). R. Baldacci, A. Mingozzi, R. Roberti: New route relaxation and
 * pricing strategies for the vehicle routing problem. Operations Research 59 (2011) 1269-1283 (ng-routes). G. Righini,
 * M. Salani: Decremental state space relaxation strategies and initialization heuristics for solving the orienteering problem
 * with time windows with dynamic programming. Computers &amp; Operations Research 36 (2009) 1191-1203. R. Roberti,
 * A. Mingozzi: Dynamic ng-path relaxation for the delivery man problem. Transportation Science 48 (2014) 413-424 (memories
 * that grow). A. M. Geoffrion: Lagrangean relaxation for integer programming. Mathematical Programming Study 2 (1974) 82-114.
 * P. Wentges: Weighted Dantzig-Wolfe decomposition for linear mixed-integer programming. International Transactions in
 * Operational Research 4 (1997) 151-162 (smoothing). T. Achterberg, T. Koch, A. Martin: Branching rules revisited. Operations
 * Research Letters 33 (2005) 42-54 (strong branching). T. Achterberg: Constraint integer programming. Thesis, Technische
 * Universit&auml;t Berlin (2007) (product rule).
 */
package org.straddle.plan.bound;
