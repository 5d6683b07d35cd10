package org.straddle.ui.safety.calls;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.straddle.check.gate.CallEntry;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.safety.CallLog;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** The log of check-in calls: which came, which are due, and which somebody has to act on now. It looks at the clock every minute. */
public final class CallsView extends SessionView<CallTable> {

    private static final Catalogue TEXTS = Catalogue.of(CallsView.class);

    public static final String ID = "org.straddle.ui.safety.calls";

    private static final int MINUTE_MS = 60_000;

    private final EventSession session = session();
    private final Runnable tick = this::tick;

    public CallsView() {
        super(TEXTS.text("callsView.closed"));
    }

    @Override
    protected CallTable content(Composite parent) {
        return new CallTable(parent, this::note);
    }

    @Override
    protected void equip(CallTable table) {
        Action note = new Act(TEXTS.text("callsView.note"), "add", this::note);
        Action open = new Act(TEXTS.text("callsView.open"), "open", () -> table.chosen().ifPresent(entry -> session.reveal(entry.stay().stop())));
        MenuManager menu = new MenuManager();
        Stream.of(menu, getViewSite().getActionBars().getToolBarManager(), getViewSite().getActionBars().getMenuManager())
                .forEach(place -> Stream.of(note, open).forEach(place::add));
        Control rows = table.keys();
        rows.setMenu(menu.createContextMenu(rows));
        rows.getDisplay().timerExec(MINUTE_MS, tick);
    }

    private void tick() {
        if (!pages().content().keys().isDisposed()) {
            show();
            pages().content().keys().getDisplay().timerExec(MINUTE_MS, tick);
        }
    }

    @Override
    public void setFocus() {
        if (session.isOpen()) {
            pages().content().keys().setFocus();
        } else {
            pages().setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        show();
    }

    @Override
    public void edited(EventSession edited) {
        show();
    }

    private void show() {
        if (!session.isOpen()) {
            return;
        }
        CallLog log = CallLog.of(session.event(), Instant.now());
        if (log.entries().isEmpty()) {
            pages().say(TEXTS.text("callsView.none"), TEXTS.text("callsView.none.plan"));
            return;
        }
        pages().content().show(log, session.event());
        pages().showContent(true);
    }

    private void note() {
        Optional<CallLog.Entry> chosen = session.isOpen() ? pages().content().chosen() : Optional.empty();
        if (chosen.isEmpty()) {
            return;
        }
        CallDialog dialog = new CallDialog(getSite().getShell(), chosen.get());
        if (dialog.open() == Window.OK) {
            Optional<TeamDay> day = CallEntry.day(chosen.get().team(), dialog.entry().at());
            day.ifPresentOrElse(out -> session.execute(dialog.entry().on(session.editingDomain(), out)),
                    () -> MessageDialog.openInformation(getSite().getShell(), TEXTS.text("callsView.noDay"),
                            TEXTS.text("callsView.noDay.enter", "team", Naming.name(chosen.get().team()))));
        }
    }
}
