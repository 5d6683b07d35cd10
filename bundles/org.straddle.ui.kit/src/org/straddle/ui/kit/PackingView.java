package org.straddle.ui.kit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ComboViewer;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.PackingSheet;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.ThingText;
import org.straddle.ui.things.Times;

/**
 * What one team takes along, ticked off item by item, with what is missing beside it. Follows a team or a stop that
 * is selected elsewhere.
 */
public final class PackingView extends ViewPart implements SessionListener {

    public static final String ID = "org.straddle.ui.kit.packing";

    private final EventSession session = EventSession.current();
    private final Packer packer = new Packer();
    private final ISelectionListener follow = this::follow;
    private EmptyOr<Composite> pages;
    private EmptyOr<SashForm> kitPages;
    private ComboViewer teams;
    private Label summary;
    private PackingTable table;
    private Text remarks;
    private Team team;
    private PackingList list;

    @Override
    public void createPartControl(Composite parent) {
        pages = new EmptyOr<>(parent, "", "", this::content);
        actions();
        getSite().getPage().addPostSelectionListener(follow);
        session.addListener(this);
        refresh();
    }

    @Override
    public void dispose() {
        session.removeListener(this);
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public void setFocus() {
        if (list == null) {
            pages.setFocus();
        } else if (list.isEmpty()) {
            teams.getControl().setFocus();
        } else {
            table.control().setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        refresh();
    }

    @Override
    public void closed(EventSession closed) {
        refresh();
    }

    @Override
    public void edited(EventSession edited) {
        refresh();
    }

    private Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(8, 4).applyTo(body);
        new Label(body, SWT.NONE).setText("&Team:");
        teams = new ComboViewer(body, SWT.READ_ONLY);
        teams.setContentProvider(ArrayContentProvider.getInstance());
        teams.setLabelProvider(LabelProvider.createTextProvider(thing -> ThingText.of((Team) thing)));
        teams.addSelectionChangedListener(change -> choose((Team) change.getStructuredSelection().getFirstElement()));
        summary = new Label(body, SWT.NONE);
        summary.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        kitPages = new EmptyOr<>(body, "", "", this::kit);
        kitPages.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        return body;
    }

    private SashForm kit(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        table = new PackingTable(sash, this::tick, row -> session.reveal(row.item()));
        remarks = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        remarks.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = "What is missing, and how long the energy lasts"));
        remarks.addTraverseListener(key -> key.doit |= key.detail == SWT.TRAVERSE_TAB_NEXT
                || key.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        sash.setWeights(76, 24);
        sash.addControlListener(ControlListener.controlResizedAdapter(resized -> {
            var size = sash.getSize();
            sash.setOrientation(size.x > 2 * size.y ? SWT.HORIZONTAL : SWT.VERTICAL);
        }));
        return sash;
    }

    private void refresh() {
        List<Team> all = session.isOpen() ? session.event().getTeams() : List.of();
        list = null;
        if (!session.isOpen()) {
            pages.say("No event is open.", "Open an event folder, make a new event, or look at the demo event.");
            return;
        }
        if (all.isEmpty()) {
            pages.say("The event has no teams.", "Make a team in the explorer and give it a kit; its packing list then"
                    + " stands here.");
            return;
        }
        if (!all.contains(team)) {
            team = all.get(0);
        }
        teams.setInput(List.copyOf(all));
        teams.setSelection(new StructuredSelection(team));
        teams.getControl().requestLayout();
        show();
        pages.showContent(true);
    }

    private void choose(Team chosen) {
        if (chosen != null && chosen != team) {
            team = chosen;
            show();
        }
    }

    private void show() {
        list = PackingList.of(team);
        summary.setText(list.isEmpty() ? "" : list.summary());
        summary.setToolTipText(summary.getText());
        if (list.isEmpty()) {
            kitPages.say(team.getKits().isEmpty() ? "This team has no kit." : "This team's kit has no items.",
                    team.getKits().isEmpty() ? "Open the team and choose the kits that it takes along."
                            : "Open the kit and add what belongs to it.");
            return;
        }
        table.show(list, Times.zone(session.event()));
        String missing = Stream.concat(list.remarks().isEmpty() ? Stream.of("Nothing is missing from this list.")
                : list.remarks().stream().map(remark -> "•  " + remark), Stream.of(list.energy().sentence()))
                .collect(Collectors.joining("\n\n"));
        if (!remarks.getText().equals(missing)) {
            remarks.setText(missing);
        }
        kitPages.showContent(true);
    }

    private void follow(IWorkbenchPart from, ISelection selection) {
        if (from != this && session.isOpen() && selection instanceof IStructuredSelection things) {
            Object first = things.getFirstElement();
            Team pointed = first instanceof Stop stop ? stop.getTeam() : first instanceof Team one ? one : null;
            if (session.event().getTeams().contains(pointed)) {
                teams.setSelection(new StructuredSelection(pointed));
            }
        }
    }

    /** One step of undo, however many rows. */
    private void tick(List<PackingRow> rows, boolean packed) {
        if (!session.isOpen()) {
            return;
        }
        Command command = null;
        if (packed) {
            Optional<String> name = packer.name(getSite().getShell());
            if (name.isPresent()) {
                command = Ticks.tick(session.editingDomain(), rows, name.get());
            }
        } else {
            command = Ticks.untick(session.editingDomain(), rows);
        }
        if (command == null || !session.execute(command)) {
            show();
        }
    }

    private void tickChosen() {
        List<PackingRow> rows = table.chosen();
        if (list != null && !rows.isEmpty()) {
            tick(rows, rows.stream().anyMatch(row -> row.packed().isEmpty()));
        }
    }

    private void actions() {
        Action tick = action("&Tick off or clear\tSpace", "accepted", this::tickChosen);
        Action open = action("&Open item\tEnter", "open",
                () -> table.chosen().stream().findFirst().ifPresent(row -> session.reveal(row.item())));
        Action openTeam = action("Open &team", "team", () -> session.reveal(team));
        Action name = action("Change the &packer's name…", "operator", () -> packer.ask(getSite().getShell()));
        Action clear = action("&Clear all ticks", "remove", () -> tick(list.rows(), false));
        Action print = action("P&rint in the browser", "publish",
                () -> SheetFile.openInBrowser(getSite().getShell(), html(), fileName()));
        Action export = action("&Export as a web page…", "export",
                () -> SheetFile.export(getSite().getShell(), html(), fileName()));
        Action copy = action("&Copy as text", "columns", this::copy);

        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        Stream.of(tick, openTeam, print, export).forEach(bar::add);
        var menu = getViewSite().getActionBars().getMenuManager();
        Stream.of(name, clear).forEach(menu::add);
        menu.add(new Separator());
        Stream.of(print, export, copy).forEach(menu::add);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.PRINT.getId(), print);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);

        MenuManager context = new MenuManager();
        Stream.of(tick, open).forEach(context::add);
        context.add(new Separator());
        Stream.of(name, clear).forEach(context::add);
        context.add(new Separator());
        Stream.of(print, export, copy).forEach(context::add);
        Control rows = table.control();
        rows.setMenu(context.createContextMenu(rows));
    }

    private void copy() {
        Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
        try {
            clipboard.setContents(new Object[] {PackingSheet.text(list, Times.zone(session.event()))},
                    new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }

    private String html() {
        return PackingSheet.html(list, Times.zone(session.event()));
    }

    private String fileName() {
        return "packing-team-" + (list.teamNumber() > 0 ? list.teamNumber() : "without-number") + ".html";
    }

    /** Does nothing while there is no list. */
    private Action action(String text, String icon, Runnable run) {
        return new Action(text, Icons.descriptor(icon)) {
            @Override
            public void run() {
                if (list != null) {
                    run.run();
                }
            }
        };
    }
}
