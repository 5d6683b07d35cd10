package org.straddle.ui.safety.gate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Composite;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateEntry;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.Gates;
import org.straddle.model.TeamDay;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** May the teams leave? All gates at a glance; items are settled, overridden and taken back from here. */
public final class GateView extends SessionView<GateBoard> {

    private static final Catalogue TEXTS = Catalogue.of(GateView.class);

    public static final String ID = "org.straddle.ui.safety.gate";

    private final EventSession session = session();
    private List<Action> deeds = List.of();
    private Gates gates;

    public GateView() {
        super(TEXTS.text("gateView.closed"));
    }

    @Override
    protected GateBoard content(Composite parent) {
        return new GateBoard(parent, new GateTable.Deeds() {
            @Override
            public void chosen() {
                pages().content().tell();
            }

            @Override
            public void open() {
                GateView.this.open();
            }

            @Override
            public void settle() {
                GateView.this.settle(false);
            }

            @Override
            public void withdraw() {
                GateView.this.withdraw();
            }
        });
    }

    @Override
    protected void equip(GateBoard board) {
        Action open = new Act(TEXTS.text("gateView.open"), "open", this::open);
        Action settle = new Act(TEXTS.text("gateView.settle"), "accepted", () -> settle(false));
        Action override = new Act(TEXTS.text("gateView.override"), "warning", () -> settle(true));
        Action withdraw = new Act(TEXTS.text("gateView.withdraw"), "remove", this::withdraw);
        deeds = List.of(open, settle, override, withdraw);
        MenuManager menu = new MenuManager();
        Stream.of(menu, getViewSite().getActionBars().getToolBarManager(), getViewSite().getActionBars().getMenuManager())
                .forEach(place -> deeds.forEach(place::add));
        board.table().setMenu(menu.createContextMenu(board.table().keys()));
        board.onChosen(() -> deeds.forEach(deed -> deed.setEnabled(board.table().item().isPresent())));
    }

    @Override
    public void setFocus() {
        if (gates == null || gates.all().isEmpty()) {
            pages().setFocus();
        } else {
            pages().content().table().keys().setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        gates = null;
        pages().say(TEXTS.text("gateView.computing"), TEXTS.text("gateView.computing.wait"));
    }

    @Override
    public void computing(EventSession computing) {
        if (gates != null) {
            show();
        }
    }

    @Override
    public void stopped(EventSession stopped) {
        if (gates == null) {
            pages().say(TEXTS.text("gateView.stopped"), TEXTS.text("gateView.stopped.again"));
        } else {
            show();
        }
    }

    @Override
    public void computed(EventSession computed, Computed result) {
        gates = result.gates();
        show();
    }

    @Override
    public void closed(EventSession closed) {
        gates = null;
        super.closed(closed);
    }

    private void show() {
        if (gates.all().isEmpty()) {
            pages().say(gates.summary(), TEXTS.text("gateView.none"));
            return;
        }
        pages().content().show(gates, session.computing());
        pages().showContent(true);
    }

    private void open() {
        pages().content().table().item().ifPresent(item -> session.reveal(item.things().get(0)));
    }

    private void settle(boolean override) {
        Optional<GateItem> item = pages().content().table().item();
        Optional<TeamDay> day = day();
        if (item.isEmpty() || day.isEmpty()) {
            return;
        }
        DepartureGate gate = pages().content().table().gate().orElseThrow();
        GateDialog dialog = new GateDialog(getSite().getShell(), gate, item.get(), override);
        if (dialog.open() == Window.OK) {
            session.execute(dialog.entry().on(session.editingDomain(), day.get()));
        }
    }

    private void withdraw() {
        pages().content().table().item().ifPresent(item -> day()
                .flatMap(day -> GateEntry.withdraw(session.editingDomain(), day, item.kind())).ifPresent(session::execute));
    }

    /** The day of the chosen cell as it is now. */
    private Optional<TeamDay> day() {
        Optional<DepartureGate> gate = pages().content().table().gate();
        Optional<TeamDay> day = gate.flatMap(chosen -> chosen.teamDay(session.event()));
        if (gate.isPresent() && day.isEmpty()) {
            MessageDialog.openInformation(getSite().getShell(), TEXTS.text("gateView.noDay"),
                    TEXTS.text("gateView.noDay.enter", "team", gate.get().team().getNumber(), "day", gate.get().day()));
        }
        return day;
    }
}
