package org.straddle.ui.planning;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Composite;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;
import org.straddle.worth.split.SplitTable;

/** The split table of the plan: square, team, passes and plan B, on one page. */
public final class SplitView extends SessionView<SplitBoard> {

    private static final Catalogue TEXTS = Catalogue.of(SplitView.class);

    public static final String ID = "org.straddle.ui.split";

    private static final NewestJob.Kind KIND = new NewestJob.Kind(TEXTS.text("splitView.job"), false, Job.SHORT,
            TEXTS.text("splitView.failed"));

    private NewestJob<SplitTable> job;

    public SplitView() {
        super(TEXTS.text("splitView.closed"));
    }

    @Override
    protected SplitBoard content(Composite parent) {
        return new SplitBoard(parent);
    }

    @Override
    protected void equip(SplitBoard content) {
        // the table is all there is
    }

    @Override
    public void opened(EventSession opened) {
        pages().say(TEXTS.text("splitView.waiting"), "");
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        if (job == null) {
            job = new NewestJob<>(getSite().getShell().getDisplay(), KIND);
        }
        job.run(monitor -> SplitTable.of(computed.outlook()), this::show,
                failure -> pages().say(TEXTS.text("splitView.failed"), TEXTS.text("splitView.failed.what")));
    }

    private void show(SplitTable split) {
        if (split.rows().isEmpty()) {
            pages().say(TEXTS.text("splitView.empty"), TEXTS.text("splitView.empty.what"));
            return;
        }
        pages().content().show(split);
        pages().showContent(true);
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
    public void closed(EventSession closed) {
        stop();
        super.closed(closed);
    }

    @Override
    public void dispose() {
        stop();
        super.dispose();
    }

    private void stop() {
        if (job != null) {
            job.stop();
        }
    }
}
