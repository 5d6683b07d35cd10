package org.straddle.ui.planning;

import java.util.Comparator;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.model.Ban;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.plan.Banning;
import org.straddle.plan.Pinning;
import org.straddle.plan.WhatIf;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.ThingLine;
import org.straddle.words.Catalogue;

/** What no search may change: the stops of the event, each to be pinned by a tick, and its bans. */
final class FixedPane {

    private static final Catalogue TEXTS = Catalogue.of(FixedPane.class);

    private final EventSession session = EventSession.current();
    private final SashForm halves;
    private final Rows<Stop> stops;
    private final Rows<Ban> bans;

    FixedPane(Composite parent) {
        halves = new SashForm(parent, SWT.HORIZONTAL);
        stops = new Rows<Stop>(halves, SWT.CHECK)
                .column(TEXTS.text("fixedPane.stop"), 60, 180, Naming::name)
                .column(TEXTS.text("fixedPane.when"), 40, 130, stop -> ThingLine.detail(stop, Outlook.zoneOf(session.event())));
        stops.viewer().getTable().addListener(SWT.Selection, this::ticked);
        Composite right = new Composite(halves, SWT.NONE);
        right.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).create());
        bans = new Rows<Ban>(right, SWT.MULTI).column(TEXTS.text("fixedPane.ban"), 100, 200, Banning::words);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(bans.frame());
        button(right, TEXTS.text("fixedPane.add"), this::add);
        button(right, TEXTS.text("fixedPane.lift"), this::lift);
        halves.setWeights(60, 40);
    }

    private static void button(Composite row, String text, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
    }

    Composite control() {
        return halves;
    }

    void show() {
        List<Stop> all = !session.isOpen() || session.event().getPlan() == null ? List.of()
                : session.event().getPlan().getStops().stream()
                        .sorted(Comparator.comparing((Stop stop) -> stop.getTeam() == null ? 0 : stop.getTeam().getNumber())
                                .thenComparing(Stop::getArrival, Comparator.nullsLast(Comparator.naturalOrder()))).toList();
        stops.viewer().setInput(all);
        for (TableItem row : stops.viewer().getTable().getItems()) {
            Stop stop = (Stop) row.getData();
            row.setChecked(stop.isPinned() || stop.getTurns().stream().anyMatch(Turn::isPinned));
        }
        bans.viewer().setInput(!session.isOpen() || session.event().getPlan() == null ? List.of()
                : List.copyOf(session.event().getPlan().getBans()));
    }

    private void ticked(Event event) {
        if (event.detail == SWT.CHECK) {
            TableItem row = (TableItem) event.item;
            List<Stop> stop = List.of((Stop) row.getData());
            session.execute(row.getChecked() ? Pinning.pinWhole(session.editingDomain(), stop)
                    : Pinning.unpinWhole(session.editingDomain(), stop));
        }
    }

    private void add() {
        CaseDialog dialog = new CaseDialog(halves.getShell(), session.event(), Case.Kind.TEAM_OUT, TEXTS.text("fixedPane.add.title"),
                TEXTS.text("fixedPane.add.explanation"), TEXTS.text("fixedPane.add.button"));
        if (dialog.open() == CaseDialog.OK) {
            dialog.result().in(session.event()).map(WhatIf::ban).ifPresent(ban ->
                    session.execute(Banning.add(session.editingDomain(), session.event(), List.of(ban))));
        }
    }

    @SuppressWarnings("unchecked")
    private void lift() {
        List<Ban> chosen = bans.viewer().getStructuredSelection().toList();
        if (!chosen.isEmpty()) {
            session.execute(Banning.remove(session.editingDomain(), session.event(), chosen));
        }
    }
}
