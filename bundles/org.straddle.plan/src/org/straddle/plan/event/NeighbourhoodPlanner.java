package org.straddle.plan.event;

import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Planner;
import org.straddle.plan.Proposal;
import org.straddle.plan.UncoveredSquare;
import org.straddle.plan.problem.JoinedStays;
import org.straddle.plan.problem.Roster;
import org.straddle.plan.search.FullStops;
import org.straddle.plan.search.NeighbourhoodSearch;
import org.straddle.worth.PlanWorth;

/** Plans by {@link NeighbourhoodSearch}: plain Java, a plan at once, no bound. */
public final class NeighbourhoodPlanner implements Planner {

    @Override
    public Proposal propose(Outlook outlook, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor) {
        return propose(EventProblem.of(outlook, settings.replan()), settings, progress, monitor, Proposal.Way.SEARCH_ALONE);
    }

    static Proposal propose(EventProblem event, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor,
            Proposal.Way way) {
        return proposal(event, settings, NeighbourhoodSearch.search(event.problem(), settings, progress,
                monitor == null ? new NullProgressMonitor() : monitor), OptionalDouble.empty(), way);
    }

    static Proposal proposal(EventProblem event, PlanSettings settings, NeighbourhoodSearch.Found found,
            OptionalDouble upperBound, Proposal.Way way) {
        Roster roster = found.roster();
        List<UncoveredSquare> uncovered = Uncovered.of(event, roster);
        JoinedStays.join(roster);
        KeptTimes.restore(event, roster);
        FullStops.fill(roster);
        Changes.Told told = Changes.of(event, ProposedStops.of(event, roster));
        return new Proposal(AgreedDownlinks.in(told.stops(), event.outlook()), chasers(event, told.stops()), roster.worth() - roster.committed(), roster.committed(), upperBound,
                uncovered, IdleTeams.of(event, told.stops()), settings.seed(), found.iterations(), found.elapsed(), found.ending(), way,
                settings.replan(), event.numbers().newBans(), told.changes());
    }

    private static PlanWorth chasers(EventProblem event, List<PlannedStop> stops) {
        return event.numbers().worth().of(stops.stream().flatMap(stop -> stop.turns().stream())
                .map(PlannedTurn::chance).toList());
    }
}
