package org.straddle.ui.explorer;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.handlers.IHandlerService;
import org.straddle.check.FindingsByThing;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Kind;
import org.straddle.ui.things.ThingActions;
import org.straddle.words.Catalogue;

/** Everything in the event as a tree; its selection holds model objects, so that other views can follow it. */
public final class ExplorerView extends SessionView<TreeViewer> {

    private static final Catalogue TEXTS = Catalogue.of(ExplorerView.class);

    public static final String ID = "org.straddle.ui.explorer";

    private final EventSession session = session();
    private final ExplorerLabels labels = new ExplorerLabels(session);
    private TreeViewer tree;

    public ExplorerView() {
        super(TEXTS.text("explorerView.closed"));
    }

    @Override
    protected TreeViewer content(Composite parent) {
        tree = new TreeViewer(parent, SWT.MULTI | SWT.H_SCROLL | SWT.V_SCROLL);
        tree.setUseHashlookup(true);
        tree.setContentProvider(new ExplorerTree());
        tree.setLabelProvider(new DelegatingStyledCellLabelProvider(labels));
        tree.addOpenListener(opening -> open((IStructuredSelection) opening.getSelection()));
        tree.addDoubleClickListener(click -> toggleGroup(((IStructuredSelection) click.getSelection())
                .getFirstElement()));
        return tree;
    }

    /** Selects and shows the thing, or what holds it if it has no line of its own. */
    public void select(Identified thing) {
        Object shown = thing;
        while (shown instanceof Identified part && !(shown instanceof Event) && !hasLine(part)) {
            shown = part.eContainer();
        }
        tree.setSelection(new StructuredSelection(shown), true);
    }

    @Override
    public void opened(EventSession opened) {
        labels.take(FindingsByThing.NONE);
        tree.setInput(session.event());
        pages().showContent(true);
        tree.expandToLevel(2);
    }

    @Override
    public void closed(EventSession closed) {
        tree.setInput(null);
        super.closed(closed);
    }

    @Override
    public void edited(EventSession edited) {
        tree.refresh();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        labels.take(computed.byThing());
        tree.refresh();
    }

    private static boolean hasLine(Identified thing) {
        return Kind.of(thing).filter(Kind::hasEditor).isPresent();
    }

    private void open(IStructuredSelection selection) {
        Object chosen = selection.getFirstElement();
        if (chosen instanceof Identified thing) {
            session.reveal(thing);
        } else if (chosen == ExplorerTree.DEMAND) {
            session.reveal(session.event());
        }
    }

    private void toggleGroup(Object chosen) {
        if (chosen instanceof Group) {
            tree.setExpandedState(chosen, !tree.getExpandedState(chosen));
        }
    }

    @Override
    protected void equip(TreeViewer content) {
        getSite().setSelectionProvider(tree);
        tree.getControl().addKeyListener(KeyListener.keyPressedAdapter(key -> {
            if (key.keyCode == SWT.INSERT && key.stateMask == 0) {
                insert();
            }
        }));
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        tree.getControl().setMenu(menu.createContextMenu(tree.getControl()));
        getSite().registerContextMenu(menu, tree);
        IActionBars bars = getViewSite().getActionBars();
        Action delete = new Act(TEXTS.text("explorerView.delete"), "delete", this::deleteChosen);
        delete.setActionDefinitionId(ActionFactory.DELETE.getCommandId());
        bars.setGlobalActionHandler(ActionFactory.DELETE.getId(), delete);
        getSite().getService(IHandlerService.class).activateHandler(ActionFactory.RENAME.getCommandId(),
                new ActionHandler(new Act(TEXTS.text("explorerView.rename"), "open", () -> open(tree.getStructuredSelection()))));
        Action collapse = new Act(TEXTS.text("explorerView.collapse"), "up", () -> tree.collapseAll());
        collapse.setToolTipText(TEXTS.text("explorerView.collapse.tooltip"));
        bars.getToolBarManager().add(new NewMenu(this::create));
        bars.getToolBarManager().add(collapse);
    }

    private void create(Kind kind) {
        if (session.isOpen()) {
            ThingActions.create(session, kind, null);
        }
    }

    private void fill(IMenuManager menu) {
        if (!session.isOpen()) {
            return;
        }
        List<Identified> chosen = chosen();
        Object first = tree.getStructuredSelection().getFirstElement();
        List<Kind> offered = offered(first);
        offered.forEach(kind -> menu.add(new Act(TEXTS.text("explorerView.new", "kind", kind.word(),
                "insertable", insertable(first).filter(kind::equals).isPresent()), Kind.STOP == kind ? "stop" : kind.icon(),
                () -> ThingActions.create(session, kind, stop(first)))));
        if (!chosen.isEmpty()) {
            menu.add(new Separator());
            menu.add(new Act(TEXTS.text("explorerView.open"), "open", () -> open(tree.getStructuredSelection())));
        }
        List<Identified> removable = chosen.stream().filter(thing -> !(thing instanceof Event)).toList();
        if (!removable.isEmpty()) {
            menu.add(new Act(TEXTS.text("explorerView.duplicate"), "new", () -> ThingActions.duplicate(session, removable)));
            menu.add(new Act(TEXTS.text("explorerView.delete"), "delete", this::deleteChosen));
        }
        menu.add(new Separator("additions"));
    }

    /** What can be made where the user points: more of the same kind, turns in a stop, anything at the event. */
    private static List<Kind> offered(Object first) {
        if (first instanceof Group group) {
            return List.of(group.kind());
        }
        if (first instanceof Stop) {
            return List.of(Kind.STOP, Kind.TURN);
        }
        if (first instanceof Identified thing && !(thing instanceof Event)) {
            return Kind.of(thing).stream().toList();
        }
        return Group.ALL.stream().map(Group::kind).toList();
    }

    /** What the key for a new thing makes, where there is no doubt. */
    private static Optional<Kind> insertable(Object first) {
        return first instanceof Stop ? Optional.of(Kind.TURN)
                : Optional.of(offered(first)).filter(kinds -> kinds.size() == 1).map(kinds -> kinds.get(0));
    }

    private void insert() {
        Object first = tree.getStructuredSelection().getFirstElement();
        if (session.isOpen() && first != null) {
            insertable(first).ifPresent(kind -> ThingActions.create(session, kind, stop(first)));
        }
    }

    private static Stop stop(Object first) {
        return first instanceof Turn turn ? (Stop) turn.eContainer() : first instanceof Stop stop ? stop : null;
    }

    private void deleteChosen() {
        ThingActions.delete(getSite().getShell(), session,
                chosen().stream().filter(thing -> !(thing instanceof Event)).toList());
    }

    private List<Identified> chosen() {
        return Stream.of(tree.getStructuredSelection().toArray()).filter(Identified.class::isInstance)
                .map(Identified.class::cast).toList();
    }
}
