package org.straddle.plan;

import java.util.OptionalDouble;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.outlook.Outlook;

/** Plans by {@link NeighbourhoodSearch}: plain Java, a plan at once, no bound. */
public final class NeighbourhoodPlanner implements Planner {

    @Override
    public Proposal propose(Outlook outlook, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor) {
        EventProblem event = EventProblem.of(outlook);
        NeighbourhoodSearch.Found found = NeighbourhoodSearch.search(event.problem(), settings, progress,
                monitor == null ? new NullProgressMonitor() : monitor);
        JoinedStays.join(found.roster());
        return new Proposal(ProposedStops.of(event, found.roster()), found.roster().worth(), OptionalDouble.empty(),
                Uncovered.of(event, found.roster()), settings.seed(), found.iterations(), found.elapsed(),
                found.ending());
    }
}
