package org.straddle.plan;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.outlook.Outlook;

/**
 * Fills the days of all teams at once, so that no two get into each other's way. There may be several
 * ways to do it; whoever asks for a plan knows only this.
 *
 * <p>A planner keeps what the coordinator pinned, and its proposal changes nothing by itself: see
 * {@code ApplyProposal} in the room {@code event}.
 */
public interface Planner {

    /**
     * Searches until the settings say stop or the monitor is cancelled. <em>Cancel means: stop and hand
     * over the best so far.</em> It does not throw; {@link Proposal#ending()} tells which it was.
     *
     * @param outlook  of a snapshot of the event; the proposal names objects of that snapshot
     * @param progress is told, on the calling thread, of every better plan and bound
     */
    Proposal propose(Outlook outlook, PlanSettings settings, PlanProgress progress, IProgressMonitor monitor);

    default Proposal propose(Outlook outlook, PlanSettings settings, IProgressMonitor monitor) {
        return propose(outlook, settings, PlanProgress.SILENT, monitor);
    }
}
