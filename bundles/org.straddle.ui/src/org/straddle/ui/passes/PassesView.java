package org.straddle.ui.passes;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.nebula.widgets.nattable.hideshow.command.MultiColumnShowCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** All passes above all sites of the event, and which of them are worked. */
public final class PassesView extends SessionView<PassesView.Content> {

    private static final Catalogue TEXTS = Catalogue.of(PassesView.class);

    public static final String ID = "org.straddle.ui.passes";

    private final EventSession session = session();

    public PassesView() {
        super(TEXTS.text("passesView.closed"));
    }

    /** The filter line and the table under it. */
    record Content(Text words, Spinner peak, Button worked, Label count, PassTable table) {

        void filter() {
            String[] wanted = words.getText().strip().toLowerCase(Locale.ROOT).split("\\s+");
            int least = peak.getSelection();
            boolean workedOnly = worked.getSelection();
            table.filter(row -> row.found().pass().peakElevationDeg() >= least
                    && (!workedOnly || !row.workedBy().isEmpty())
                    && Stream.of(wanted).allMatch(text(row)::contains));
            int size = table.rows().size();
            count.setText(TEXTS.text("passesView.count", "count", size));
            count.requestLayout();
        }

        private static String text(PassRow row) {
            return (Naming.name(row.found().site()) + " " + Naming.name(row.found().bird()) + " "
                    + TimeText.utc().weekday(row.found().pass().aos()) + " " + row.workedBy()).toLowerCase(Locale.ROOT);
        }
    }

    @Override
    protected void equip(Content content) {
        PassTable table = content.table();
        table.control().addMouseListener(MouseListener.mouseDoubleClickAdapter(click -> revealFirst()));
        table.control().addKeyListener(KeyListener.keyPressedAdapter(key -> {
            if (key.keyCode == SWT.CR || key.keyCode == SWT.KEYPAD_CR) {
                revealFirst();
            }
        }));
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        table.control().setMenu(menu.createContextMenu(table.control()));
        getSite().setSelectionProvider(table.selection());
        IMenuManager viewMenu = getViewSite().getActionBars().getMenuManager();
        columnChoice(viewMenu, table);
        getViewSite().getActionBars().getToolBarManager().add(new Act(TEXTS.text("passesView.csv"), "export",
                () -> PassCsv.ask(getSite().getShell(), table.rows())));
    }

    @Override
    public void setFocus() {
        pages().content().table().control().setFocus();
    }

    @Override
    public void opened(EventSession opened) {
        pages().say(TEXTS.text("passesView.searching"), TEXTS.text("passesView.searching.text"));
    }

    @Override
    public void stopped(EventSession from) {
        if (session.computed().isEmpty()) {
            pages().say(TEXTS.text("passesView.stopped"), TEXTS.text("passesView.stopped.text"));
        }
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        List<SitePass> passes = computed.outlook().passes();
        if (passes.isEmpty()) {
            pages().say(TEXTS.text("passesView.none"), TEXTS.text("passesView.none.text"));
            return;
        }
        Map<Pass, String> workers = PassWorkers.of(computed.snapshot(), passes);
        pages().content().table().show(passes.stream().map(found -> new PassRow(found, computed.outlook().zone(),
                workers.getOrDefault(found.pass(), ""))).toList());
        pages().content().filter();
        pages().showContent(true);
    }

    @Override
    protected Content content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(5).extendedMargins(0, 8, 3, 0).spacing(10, 3)
                .create());
        Text words = new Text(body, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        words.setMessage(TEXTS.text("passesView.search"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        new Label(body, SWT.NONE).setText(TEXTS.text("passesView.peak"));
        Spinner peak = new Spinner(body, SWT.BORDER);
        peak.setMaximum(90);
        Button worked = new Button(body, SWT.CHECK);
        worked.setText(TEXTS.text("passesView.worked"));
        Label count = new Label(body, SWT.NONE);
        PassTable table = new PassTable(body);
        GridDataFactory.fillDefaults().grab(true, true).span(5, 1).applyTo(table.control());
        Content content = new Content(words, peak, worked, count, table);
        words.addModifyListener(change -> content.filter());
        peak.addListener(SWT.Selection, change -> content.filter());
        worked.addListener(SWT.Selection, change -> content.filter());
        return content;
    }

    private static void columnChoice(IMenuManager menu, PassTable table) {
        for (int i = 0; i < PassRow.COLUMNS.size(); i++) {
            int column = i;
            Action choice = new Action(TEXTS.text("passesView.column", "column",
                    PassRow.COLUMNS.get(i).title()), IAction.AS_CHECK_BOX) {
                @Override
                public void run() {
                    if (isChecked()) {
                        table.control().doCommand(new MultiColumnShowCommand(List.of(column)));
                    } else {
                        table.columns().hideColumnIndexes(List.of(column));
                    }
                }
            };
            choice.setChecked(true);
            menu.add(choice);
        }
    }

    private void revealFirst() {
        PassRow row = chosen();
        if (row != null) {
            session.reveal(row.found().site());
        }
    }

    private PassRow chosen() {
        return (PassRow) ((IStructuredSelection) pages().content().table().selection().getSelection())
                .getFirstElement();
    }

    private void fill(IMenuManager menu) {
        PassRow row = chosen();
        if (row == null || !session.isOpen()) {
            return;
        }
        for (Identified thing : List.of(row.found().site(), row.found().bird())) {
            menu.add(new Act(TEXTS.text("passesView.reveal", "thing", Naming.name(thing)),
                    "open", () -> session.reveal(thing)));
        }
        menu.add(new Separator());
        for (Stop stop : stopsDuring(row.found())) {
            menu.add(new Act(TEXTS.text("passesView.work", "stop", Naming.name(stop)),
                    "turn", () -> work(row.found(), stop)));
        }
    }

    /** Live stops at the pass's site that hold the whole pass. */
    private List<Stop> stopsDuring(SitePass found) {
        Event event = session.event();
        return event.getPlan() == null ? List.of() : event.getPlan().getStops().stream()
                .filter(stop -> stop.getSite() != null && stop.getSite().getId().equals(found.site().getId())
                        && stop.getArrival() != null && stop.getDeparture() != null
                        && !stop.getArrival().isAfter(found.pass().aos())
                        && !stop.getDeparture().isBefore(found.pass().los())).toList();
    }

    private void work(SitePass found, Stop stop) {
        session.live(found.bird().getId()).filter(Bird.class::isInstance).ifPresent(bird -> {
            Turn turn = Fresh.turn((Bird) bird, found.pass().aos(), found.pass().los());
            session.execute(Edit.add(session.editingDomain(), stop, Literals.STOP__TURNS, turn));
        });
    }
}
