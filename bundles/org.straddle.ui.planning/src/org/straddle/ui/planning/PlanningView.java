package org.straddle.ui.planning;

import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Composite;
import org.straddle.model.Event;
import org.straddle.model.Snapshot;
import org.straddle.plan.Proposal;
import org.straddle.plan.event.ApplyProposal;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.ui.workbench.PlanSearch;
import org.straddle.words.Catalogue;

/**
 * Searches for plans while the work goes on: how good the best one is and how far from the best there can be, what it
 * changes and why, and the button that puts it in as one step.
 */
public final class PlanningView extends SessionView<PlanningBoard> implements NewestJob.Heard<Proposal>, PlanSearch {

    private static final Catalogue TEXTS = Catalogue.of(PlanningView.class);

    private static final String NOTHING = TEXTS.text("planningBoard.nothing");

    private NewestJob<Proposal> job;
    /** The id of the event that the running search is of. */
    private String searched;
    private Optional<Proposal> offered = Optional.empty();
    private boolean putIn;

    public PlanningView() {
        super(TEXTS.text("planningView.closed"));
    }

    @Override
    protected PlanningBoard content(Composite parent) {
        return new PlanningBoard(parent, new PlanningBoard.Deeds(this::search, this::stop, this::apply, this::discard));
    }

    @Override
    protected void equip(PlanningBoard content) {
        // its buttons are all there is
    }

    @Override
    public void setFocus() {
        if (session().isOpen()) {
            pages().content().setFocus();
        } else {
            super.setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        forget(NOTHING);
        pages().content().questions().forgetCases();
        pages().content().questions().forgetSites();
        pages().content().fixed().show();
        pages().content().toDo().clear();
        pages().showContent(true);
    }

    @Override
    public void closed(EventSession closed) {
        forget(NOTHING);
        pages().content().toDo().stop();
        super.closed(closed);
    }

    @Override
    public void edited(EventSession edited) {
        pages().content().fixed().show();
        pages().content().questions().showSites();
        if (putIn) {
            forget(NOTHING);
        }
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        pages().content().toDo().work(computed.outlook());
    }

    @Override
    public void dispose() {
        stop();
        pages().content().toDo().stop();
        super.dispose();
    }

    /** Searches with what stands in the fields; a search that runs goes on. */
    @Override
    public void search() {
        PlanningBoard board = pages().content();
        if (!session().isOpen() || board.isRunning()) {
            return;
        }
        session().commitPendingEdits();
        if (!board.questions().check()) {
            board.refused(board.questions().correct());
            return;
        }
        offered = Optional.empty();
        Event snapshot = Snapshot.of(session().event());
        if (job == null) {
            job = new NewestJob<>(getSite().getShell().getDisplay(), SearchRun.KIND);
        }
        searched = snapshot.getId();
        board.running();
        job.run(new SearchRun(snapshot, session().folder().elements(), board.questions().settings(snapshot), this::stands), this);
    }

    /** The best plan so far is still offered. */
    private void stop() {
        if (job != null) {
            job.endSoon();
        }
    }

    private void forget(String words) {
        if (job != null) {
            job.stop();
        }
        offered = Optional.empty();
        putIn = false;
        pages().content().idle(words);
    }

    private void discard() {
        forget(TEXTS.text("planningView.discarded"));
    }

    private void apply() {
        offered.ifPresent(proposal -> {
            if (session().execute(ApplyProposal.command(session().editingDomain(), session().event(), proposal))) {
                forget(TEXTS.text("planningView.used"));
                putIn = true;
                pages().content().questions().forgetCases();
            } else {
                MessageDialog.openError(getSite().getShell(), TEXTS.text("planningView.unfit.title"), TEXTS.text("planningView.unfit"));
            }
        });
    }

    private boolean isAwaited() {
        return session().isOpen() && session().event().getId().equals(searched);
    }

    private void stands(SearchRun.Stand stand) {
        if (isAwaited()) {
            pages().content().stands(stand);
        }
    }

    @Override
    public void done(Proposal proposal) {
        if (isAwaited()) {
            offered = Optional.of(proposal);
            pages().content().found(proposal);
        }
    }

    @Override
    public void failed(Throwable failure) {
        if (isAwaited()) {
            forget(SearchRun.sentence(failure));
        }
    }

    @Override
    public void stopped() {
        if (isAwaited()) {
            forget(SearchRun.stopped());
        }
    }
}
