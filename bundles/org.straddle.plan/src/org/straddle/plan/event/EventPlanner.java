package org.straddle.plan.event;

import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Planner;
import org.straddle.plan.Proposal;
import org.straddle.plan.bound.BoundedSearch;
import org.straddle.plan.bound.NativeSolvers;

/** Plans by search and bound together, see {@link BoundedSearch}, and by search alone where the solver's libraries do not load. */
public final class EventPlanner implements Planner {

    private final BooleanSupplier solvers;

    /** The best planner there is for this machine. Nothing is loaded before it is asked for a plan. */
    public static Planner standard() {
        return new EventPlanner(NativeSolvers::load);
    }

    /** @param solvers loads the solver's libraries; false when they do not load */
    EventPlanner(BooleanSupplier solvers) {
        this.solvers = solvers;
    }

    @Override
    public Proposal propose(Outlook outlook, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor) {
        EventProblem event = EventProblem.of(outlook, settings.replan());
        if (!solvers.getAsBoolean()) {
            return NeighbourhoodPlanner.propose(event, settings, progress, monitor, Proposal.Way.SOLVER_MISSING);
        }
        BoundedSearch.Found found = BoundedSearch.search(event.problem(), settings, progress,
                monitor == null ? new NullProgressMonitor() : monitor);
        return NeighbourhoodPlanner.proposal(event, settings, found.plan(), found.upperBound(),
                found.boundFailed() ? Proposal.Way.BOUND_FAILED : Proposal.Way.WITH_BOUND);
    }
}
