package org.straddle.ui.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.straddle.model.Event;
import org.straddle.model.Snapshot;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.plan.ApplyProposal;
import org.straddle.plan.PlanProgress;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Planner;
import org.straddle.plan.Proposal;
import org.straddle.ui.session.EventSession;

/**
 * Searches for a plan in the background while the work goes on, shows how good it gets, and puts it in on demand as
 * one step. Cancelling the search keeps the best plan found so far on offer.
 */
final class ProposePlan extends Job {

    /** So many squares that are not worked are named; more would not be read. */
    private static final int NAMED = 8;

    private final Shell shell;
    private final Event snapshot;
    private final Path elementsFolder;
    private final PlanSettings settings;

    private ProposePlan(Shell shell, Event snapshot, Path elementsFolder, PlanSettings settings) {
        super("Searching for a plan");
        this.shell = shell;
        this.snapshot = snapshot;
        this.elementsFolder = elementsFolder;
        this.settings = settings;
    }

    static void ask(Shell shell) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        ProposeDialog dialog = new ProposeDialog(shell);
        if (dialog.open() == ProposeDialog.OK) {
            new ProposePlan(shell, Snapshot.of(session.event()), session.folder().elementsFolder(), dialog.settings()).schedule();
            showProgress(shell);
        }
    }

    /** Where the search tells how good the plan is by now, and where it can be cancelled. */
    private static void showProgress(Shell shell) {
        try {
            PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(PlanPerspective.PROGRESS,
                    null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException failure) {
            Problem.show(shell, "The view of progress could not be shown. The search goes on.", failure);
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, "Searching for a plan", 100);
        Outlook outlook;
        try {
            outlook = Outlook.of(snapshot, EarthSearch.in(elementsFolder), progress.split(20));
        } catch (IOException failure) {
            return Status.error(failure.getMessage(), failure);
        }
        SubMonitor search = progress.newChild(80, SubMonitor.SUPPRESS_NONE);
        Proposal proposal = Planner.standard().propose(outlook, settings, told(search), search);
        shell.getDisplay().asyncExec(() -> offer(proposal));
        return Status.OK_STATUS;
    }

    private static PlanProgress told(IProgressMonitor search) {
        return new PlanProgress() {
            @Override
            public void improved(double worth, long iterations, Duration elapsed) {
                search.subTask(String.format(Locale.ROOT, "worth %.2f after %d s; cancel keeps this plan on offer",
                        worth, elapsed.toSeconds()));
            }

            @Override
            public void bounded(double upperBound, double worth, Duration elapsed) {
                search.subTask(String.format(Locale.ROOT, "worth %.2f, at most %.2f possible, after %d s; cancel keeps"
                        + " this plan on offer", worth, upperBound, elapsed.toSeconds()));
            }
        };
    }

    private void offer(Proposal proposal) {
        EventSession session = EventSession.current();
        if (!session.isOpen() || !session.event().getId().equals(snapshot.getId()) || shell.isDisposed()) {
            return;
        }
        if (proposal.ending() == Proposal.Ending.NOTHING_TO_PLAN) {
            MessageDialog.openInformation(shell, "Plan", "There is nothing to plan: either no team has free time, or no"
                    + " bird can be worked from any site then.\n\nEnter team days, sites with squares and birds with"
                    + " element sets, then plan again.");
            return;
        }
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, "Plan", words(proposal), SWT.NONE,
                "&Put it in", "&Throw it away");
        if (answer != 0) {
            return;
        }
        Command command = ApplyProposal.command(session.editingDomain(), session.event(), proposal);
        if (!session.execute(command)) {
            MessageDialog.openError(shell, "Plan", "The plan does not fit any more: teams, sites, birds or pinned stops"
                    + " were changed while it was searched.\n\nPlan again.");
        }
    }

    private static String words(Proposal proposal) {
        int turns = proposal.stops().stream().mapToInt(stop -> stop.turns().size()).sum();
        String bound = proposal.gap().isEmpty() ? ""
                : String.format(Locale.ROOT, " (within %.1f %% of the best possible, which is at most %.2f)",
                        100 * proposal.gap().getAsDouble(), proposal.upperBound().getAsDouble());
        StringBuilder words = new StringBuilder(String.format(Locale.ROOT,
                "%d stops with %d turns, worth %.2f%s, found in %d s%s.", proposal.stops().size(), turns,
                proposal.worth(), bound, proposal.elapsed().toSeconds(),
                proposal.ending() == Proposal.Ending.STOPPED ? ", when you stopped the search" : ""));
        if (proposal.way() == Proposal.Way.SOLVER_MISSING) {
            words.append("\n\n").append(proposal.way().sentence());
        }
        if (!proposal.uncovered().isEmpty()) {
            words.append("\n\nNot worked: ");
            words.append(String.join(", ", proposal.uncovered().stream().limit(NAMED)
                    .map(open -> open.square() + " (" + Math.round(100 * open.demand()) + " %)").toList()));
            int more = proposal.uncovered().size() - NAMED;
            words.append(more > 0 ? " and " + more + " more." : ".");
        }
        return words + "\n\nIt takes the place of all stops and turns that are not pinned. Undo brings them back.";
    }
}
