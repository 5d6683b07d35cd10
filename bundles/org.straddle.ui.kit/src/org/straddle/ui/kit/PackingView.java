package org.straddle.ui.kit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.actions.ActionFactory;
import org.straddle.kit.GoingBack;
import org.straddle.kit.Packing;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.team.ResilienceText;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.publish.packing.PackingPage;
import org.straddle.publish.packing.PackingSheet;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/**
 * What one team takes along, ticked off item by item, with what is missing beside it. Follows a team or a stop that
 * is selected elsewhere.
 */
public final class PackingView extends TeamAnswerView<Packing> {

    private static final Catalogue TEXTS = Catalogue.of(PackingView.class);

    public static final String ID = "org.straddle.ui.kit.packing";

    private final EventSession session = session();
    private final Packer packer = new Packer();
    private PackingTable table;
    private Text remarks;
    private PackingList list;
    private Packing newest;

    public PackingView() {
        super(TEXTS.text("packingView.makeTeamExplorer"), TEXTS.text("packingView.reckoning"),
                TEXTS.text("packingView.reckoning.failed"));
    }

    @Override
    public void setFocus() {
        if (thing() == null || list.isEmpty()) {
            pages().setFocus();
        } else {
            table.control().setFocus();
        }
    }

    /** Which tick the boxes are. */
    @Override
    int choices(Composite row) {
        new Label(row, SWT.NONE).setText(TEXTS.text("packingView.boxes"));
        Combo boxes = new Combo(row, SWT.READ_ONLY);
        boxes.setItems(Stream.of(TickKind.values()).map(TEXTS::text).toArray(String[]::new));
        boxes.select(0);
        boxes.addListener(SWT.Selection, chosen -> table.boxes(TickKind.values()[boxes.getSelectionIndex()]));
        return 2;
    }

    @Override
    SashForm answers(Composite parent) {
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
        sumUp(list.isEmpty() ? "" : list.summary());
        if (list.isEmpty()) {
            answerPages().say(team.getKits().isEmpty() ? TEXTS.text("packingView.teamHasKit")
                    : TEXTS.text("packingView.emptyKit"),
                    team.getKits().isEmpty() ? TEXTS.text("packingView.openTeamChoose")
                            : TEXTS.text("packingView.openKitAdd"));
            return;
        }
        table.show(list, Outlook.zoneOf(session.event()));
        answerPages().showContent(true);
        session.computed().ifPresent(computed -> reckon(team, computed));
    }

    /** What the plan asks, what ends the work and how long the batteries last. */
    @Override
    Packing answer(Team team, Computed computed) {
        return Packing.of(team, computed.outlook());
    }

    @Override
    String teamId(Packing packing) {
        return packing.team().getId();
    }

    @Override
    void say(Packing packing, Computed computed) {
        newest = packing;
        Stream<String> asked = packing.asks().things().stream().map(each -> Stream.concat(Stream.of(TEXTS.text("packingView.asked",
                "met", each.isMet() ? "yes" : "no", "thing", each.sentence())), each.asked().because().stream()
                .map(reason -> TEXTS.text("packingView.because", "reason", reason))).collect(Collectors.joining("\n")));
        String missing = Stream.of(packing.remarks().isEmpty() ? Stream.of(TEXTS.text("packingView.nothingMissingFrom"))
                : packing.remarks().stream().map(PackingView::bullet), asked, packing.asks().marking().stream().map(PackingView::bullet),
                packing.asks().lookout().stream().map(PackingView::bullet), packing.energyLines().stream().map(PackingView::bullet),
                packing.bagLines().stream().map(PackingView::bullet), packing.goingBack().stream().map(back -> bullet(back.sentence())),
                packing.inCar().stream().map(car -> bullet(car.sentence())))
                .flatMap(lines -> lines).collect(Collectors.joining("\n\n"));
        if (!remarks.getText().equals(missing)) {
            remarks.setText(missing);
        }
        ResilienceText text = new ResilienceText(packing.resilience());
        Map<String, String> losses = new HashMap<>();
        packing.resilience().singlePoints().forEach(point -> packing.resilience().inventory().item(point.gear()).ifPresent(item ->
                losses.put(item.getId(), TEXTS.text("packingTable.stops", "works", text.works(point.stops())))));
        table.losses(losses);
    }

    private static String bullet(String line) {
        return TEXTS.text("packingView.bullet", "line", line);
    }

    /** One step of undo, however many rows. */
    private void tick(List<PackingRow> rows, boolean packed) {
        tick(table.boxes(), rows, packed);
    }

    private void tick(TickKind kind, List<PackingRow> rows, boolean packed) {
        if (!session.isOpen()) {
            return;
        }
        Command command = null;
        if (packed) {
            Optional<String> name = packer.name(getSite().getShell());
            if (name.isPresent()) {
                command = Ticks.tick(session.editingDomain(), kind, rows, name.get());
            }
        } else {
            command = Ticks.untick(session.editingDomain(), kind, rows);
        }
        if (command == null || !session.execute(command)) {
            show(thing());
        }
    }

    private void tickChosen(TickKind kind) {
        List<PackingRow> rows = table.chosen();
        if (!rows.isEmpty()) {
            tick(kind, rows, rows.stream().anyMatch(row -> kind.of(row.item()) == null));
        }
    }

    @Override
    protected void equip(Composite content) {
        super.equip(content);
        Action tick = act(TEXTS.text("packingView.tickOffClear"), "accepted", () -> tickChosen(table.boxes()));
        List<Action> ticks = Stream.of(TickKind.values()).map(kind -> act(TEXTS.text("packingView.tickKind", "kind", TEXTS.text(kind), "key",
                String.valueOf(kind.key())), "accepted", () -> tickChosen(kind))).toList();
        table.control().addListener(SWT.KeyDown, key -> Stream.of(TickKind.values()).filter(kind -> key.character == kind.key())
                .findFirst().ifPresent(kind -> {
                    key.doit = false;
                    tickChosen(kind);
                }));
        Action open = act(TEXTS.text("packingView.openItemEnter"), "open",
                () -> table.chosen().stream().findFirst().ifPresent(row -> session.reveal(row.item())));
        Action openTeam = act(TEXTS.text("packingView.openTeam"), "team", () -> {
            if (thing() != null) {
                session.reveal(thing());
            }
        });
        Action name = act(TEXTS.text("packingView.changePacker"), "operator", () -> packer.ask(getSite().getShell()));
        Action clear = act(TEXTS.text("packingView.clearAllTicks"), "remove", () -> {
            if (thing() != null) {
                tick(list.rows(), false);
            }
        });
        Action print = act(TEXTS.text("packingView.print"), "publish", () -> page(page ->
                SheetFile.openInBrowser(getSite().getShell(), SheetForm.HTML.content(page), fileName(SheetForm.HTML))));
        List<Action> exports = Stream.of(SheetForm.values()).map(form -> act(TEXTS.text("packingView.export", "form", TEXTS.text(form)),
                "export", () -> page(page -> SheetFile.export(getSite().getShell(), form.content(page), form, fileName(form)))))
                .toList();
        Action export = exports.get(0);
        Action bring = act(TEXTS.text("packingView.bring"), "import", () -> KitTableFile.bringIn(getSite().getShell(), session));
        Action make = act(TEXTS.text("packingView.fromTemplate"), "add", () -> TemplateDeeds.make(getSite().getShell(), session, thing()));
        Action keep = act(TEXTS.text("packingView.saveTemplate"), "save", () -> TemplateDeeds.save(getSite().getShell(), thing()));
        Action paste = act(TEXTS.text("packingView.paste"), "import", () -> KitTableFile.paste(getSite().getShell(), session));
        Action give = act(TEXTS.text("packingView.give"), "export",
                () -> {
                    if (thing() != null) {
                        KitTableFile.export(getSite().getShell(), list, fileName(null));
                    }
                });
        Action copy = act(TEXTS.text("packingView.copyAsText"), "columns", this::copy);

        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        Stream.of(tick, openTeam, print, export).forEach(bar::add);
        var menu = getViewSite().getActionBars().getMenuManager();
        Stream.of(name, clear).forEach(menu::add);
        menu.add(new Separator());
        menu.add(print);
        exports.forEach(menu::add);
        menu.add(copy);
        menu.add(new Separator());
        Stream.of(bring, paste, give).forEach(menu::add);
        menu.add(new Separator());
        Stream.of(make, keep).forEach(menu::add);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.PRINT.getId(), print);
        getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), copy);

        MenuManager context = new MenuManager();
        context.add(tick);
        ticks.forEach(context::add);
        context.add(open);
        context.add(new Separator());
        Stream.of(name, clear).forEach(context::add);
        context.add(new Separator());
        context.add(print);
        exports.forEach(context::add);
        context.add(copy);
        Control rows = table.control();
        rows.setMenu(context.createContextMenu(rows));
    }

    private void copy() {
        page(page -> {
            Clipboard clipboard = new Clipboard(getSite().getShell().getDisplay());
            try {
                clipboard.setContents(new Object[] {PackingSheet.text(page)}, new Transfer[] {TextTransfer.getInstance()});
            } finally {
                clipboard.dispose();
            }
        });
    }

    /** The list as it is now, with the rest as it was last computed. */
    private void page(Consumer<PackingPage> then) {
        if (thing() == null) {
            return;
        }
        if (newest == null || session.computed().isEmpty()) {
            sumUp(TEXTS.text("packingView.wait"));
            return;
        }
        Packing now = new Packing(thing(), list, newest.asks(), newest.resilience(), newest.energy(), newest.dryRuns(), GoingBack.of(thing()),
                newest.stays(), newest.inCar());
        then.accept(PackingPage.of(now, session.computed().get().outlook()));
    }

    private String fileName(SheetForm form) {
        return PackingPage.fileName(thing(), session.event()) + (form == null ? ".csv" : form.ending());
    }
}
