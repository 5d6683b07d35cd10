package org.straddle.ui.workbench;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.StatusLineContributionItem;
import org.straddle.check.Tally;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/** The foot of the window: how the event stands. */
final class StatusText implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(StatusText.class);

    private static final int WIDTH_CHARACTERS = 80;

    private final IStatusLineManager line;
    private final StatusLineContributionItem tally =
            new StatusLineContributionItem("org.straddle.ui.tally", WIDTH_CHARACTERS);

    StatusText(IStatusLineManager line) {
        this.line = line;
        line.add(tally);
    }

    void follow(EventSession session) {
        session.addListener(this);
        if (session.isOpen()) {
            computing(session);
        }
    }

    @Override
    public void computing(EventSession session) {
        show(TEXTS.text("statusText.checking"));
    }

    @Override
    public void computed(EventSession session, Computed computed) {
        show(Tally.of(computed.findings()).toString());
    }

    @Override
    public void stopped(EventSession session) {
        show(TEXTS.text("statusText.stopped"));
    }

    @Override
    public void closed(EventSession session) {
        show("");
    }

    private void show(String text) {
        tally.setText(text);
        line.update(false);
    }
}
