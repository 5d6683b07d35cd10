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
import org.eclipse.ui.actions.ActionFactory;
import org.straddle.kit.Bags;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.PackingSheet;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.parts.ThingView;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/**
 * What one team takes along, ticked off item by item, with what is missing beside it. Follows a team or a stop that
 * is selected elsewhere.
 */
public final class PackingView extends ThingView<Team> {

    private static final Catalogue TEXTS = Catalogue.of(PackingView.class);

    public static final String ID = "org.straddle.ui.kit.packing";

    private final EventSession session = session();
    private final Packer packer = new Packer();
    private EmptyOr<SashForm> kitPages;
    private Label summary;
    private PackingTable table;
    private Text remarks;
    private PackingList list;

    public PackingView() {
        super(TEXTS.text("packingView.eventHasTeams"),
                TEXTS.text("packingView.makeTeamExplorer"));
    }

    @Override
    public void setFocus() {
        if (thing() == null || list.isEmpty()) {
            pages().setFocus();
        } else {
            table.control().setFocus();
        }
    }

    @Override
    protected List<Team> things(Event event) {
        return event.getTeams();
    }

    @Override
    protected Object meant(Object selected) {
        return selected instanceof Stop stop ? stop.getTeam() : selected;
    }

    @Override
    protected Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(8, 4).applyTo(body);
        chooser(body, TEXTS.text("packingView.team"));
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
                asked -> asked.result = TEXTS.text("packingView.whatMissingHow")));
        TabLeaves.on(remarks);
        sash.setWeights(76, 24);
        sash.addControlListener(ControlListener.controlResizedAdapter(resized -> {
            var size = sash.getSize();
            sash.setOrientation(size.x > 2 * size.y ? SWT.HORIZONTAL : SWT.VERTICAL);
        }));
        return sash;
    }

    @Override
    protected void show(Team team) {
        list = PackingList.of(team);
        summary.setText(list.isEmpty() ? "" : list.summary());
        summary.setToolTipText(summary.getText());
        if (list.isEmpty()) {
            kitPages.say(team.getKits().isEmpty() ? TEXTS.text("packingView.teamHasKit")
                    : TEXTS.text("packingView.emptyKit"),
                    team.getKits().isEmpty() ? TEXTS.text("packingView.openTeamChoose")
                            : TEXTS.text("packingView.openKitAdd"));
            return;
        }
        table.show(list, Outlook.zoneOf(session.event()));
        String missing = Stream.concat(list.remarks().isEmpty() ? Stream.of(TEXTS.text("packingView.nothingMissingFrom"))
                : list.remarks().stream().map(remark -> "•  " + remark),
                Stream.concat(Stream.of(list.energy().sentence()), planned(team))).collect(Collectors.joining("\n\n"));
        if (!remarks.getText().equals(missing)) {
            remarks.setText(missing);
        }
        kitPages.showContent(true);
    }

    /** What ends the planned work, how long the batteries last through it, and what is in which bag. */
    private Stream<String> planned(Team team) {
        Itinerary itinerary = Itinerary.of(session.event());
        ResilienceText text = new ResilienceText(Resilience.of(team, itinerary));
        return Stream.of(text.singlePoints().stream(),
                TeamEnergy.of(team, itinerary, PolicyFigures.of(session.event().getPolicies()), Outlook.zoneOf(session.event()))
                        .stream().flatMap(supply -> supply.lines().stream()),
                Bags.lines(list.rows().stream().map(PackingRow::item).toList()).stream())
                .flatMap(lines -> lines).map(line -> "•  " + line);
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
            show(thing());
        }
    }

    private void tickChosen() {
        List<PackingRow> rows = table.chosen();
        if (!rows.isEmpty()) {
            tick(rows, rows.stream().anyMatch(row -> row.packed().isEmpty()));
        }
    }

    @Override
    protected void equip(Composite content) {
        super.equip(content);
        Action tick = act(TEXTS.text("packingView.tickOffClear"), "accepted", this::tickChosen);
        Action open = act(TEXTS.text("packingView.openItemEnter"), "open",
                () -> table.chosen().stream().findFirst().ifPresent(row -> session.reveal(row.item())));
        Action openTeam = act(TEXTS.text("packingView.openTeam"), "team", () -> session.reveal(thing()));
        Action name = act(TEXTS.text("packingView.changePacker"), "operator", () -> packer.ask(getSite().getShell()));
        Action clear = act(TEXTS.text("packingView.clearAllTicks"), "remove", () -> tick(list.rows(), false));
        Action print = act(TEXTS.text("packingView.print"), "publish",
                () -> SheetFile.openInBrowser(getSite().getShell(), html(), fileName()));
        Action export = act(TEXTS.text("packingView.exportAsWeb"), "export",
                () -> SheetFile.export(getSite().getShell(), html(), fileName()));
        Action copy = act(TEXTS.text("packingView.copyAsText"), "columns", this::copy);

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
            clipboard.setContents(new Object[] {PackingSheet.text(list, Outlook.zoneOf(session.event()))},
                    new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }

    private String html() {
        return PackingSheet.html(list, Outlook.zoneOf(session.event()));
    }

    private String fileName() {
        return "packing-team-" + (list.teamNumber() > 0 ? list.teamNumber() : "without-number") + ".html";
    }
}
