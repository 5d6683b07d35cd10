package org.straddle.plan;

import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.outlook.Outlook;

/** Plans by {@link BoundedSearch}, and by search alone where the solver's libraries do not load. */
final class BoundedPlanner implements Planner {

    private final BooleanSupplier solvers;

    /** @param solvers loads the solver's libraries; false when they do not load */
    BoundedPlanner(BooleanSupplier solvers) {
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
        return NeighbourhoodPlanner.proposal(event, settings, found.plan(), found.upperBound(), Proposal.Way.WITH_BOUND);
    }
}
