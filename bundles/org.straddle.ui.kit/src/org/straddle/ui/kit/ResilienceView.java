package org.straddle.ui.kit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.parts.ThingView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/**
 * What the kit of a team can do for its plan: each way of working, what ends it, and one fix for each that has one. Follows
 * a team or a stop that is selected elsewhere.
 */
public final class ResilienceView extends ThingView<Team> {

    private static final Catalogue TEXTS = Catalogue.of(ResilienceView.class);

    public static final String ID = "org.straddle.ui.kit.resilience";

    private final EventSession session = session();
    private final NewestJob<WeakPoints> reckoning = new NewestJob<>(Display.getCurrent(),
            new NewestJob.Kind(TEXTS.text("resilience.reckoning"), false, Job.SHORT, TEXTS.text("resilience.reckoning.failed")));
    private Label summary;
    private EmptyOr<SashForm> pages;
    private TreeViewer tree;
    private Text closing;

    public ResilienceView() {
        super(TEXTS.text("packingView.eventHasTeams"), TEXTS.text("resilience.makeTeam"));
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
    public void setFocus() {
        if (thing() == null || tree.getTree().getItemCount() == 0) {
            pages().setFocus();
        } else {
            tree.getTree().setFocus();
        }
    }

    @Override
    protected Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(8, 4).applyTo(body);
        chooser(body, TEXTS.text("packingView.team"));
        summary = new Label(body, SWT.NONE);
        summary.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        pages = new EmptyOr<>(body, "", "", this::answers);
        pages.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        return body;
    }

    private SashForm answers(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        Composite frame = new Composite(sash, SWT.NONE);
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        tree.getTree().setHeaderVisible(true);
        tree.getTree().setLinesVisible(true);
        tree.getTree().getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("resilience.tree")));
        tree.setContentProvider(new Lines());
        column(layout, TEXTS.text("resilience.what"), 60, true);
        column(layout, TEXTS.text("resilience.fix"), 40, false);
        tree.addOpenListener(opening -> fixChosen());
        closing = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        closing.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("resilience.closing")));
        TabLeaves.on(closing);
        sash.setWeights(70, 30);
        return sash;
    }

    private void column(TreeColumnLayout layout, String heading, int weight, boolean first) {
        TreeViewerColumn column = new TreeViewerColumn(tree, SWT.LEFT);
        column.getColumn().setText(heading);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object line) {
                return first ? ((WeakPoints.Line) line).what() : ((WeakPoints.Line) line).help();
            }

            @Override
            public Image getImage(Object line) {
                WeakPoints.Line shown = (WeakPoints.Line) line;
                return first ? Icons.image(switch (shown.weight()) {
                    case GOOD -> "accepted";
                    case KNOWN -> "advice";
                    case WEAK -> "warning";
                })
                        : shown.fix().isPresent() ? Icons.image("mend") : null;
            }
        });
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, weight * 6, true));
    }

    @Override
    protected void equip(Composite content) {
        super.equip(content);
        Action fix = act(TEXTS.text("resilience.apply"), "mend", this::fixChosen);
        Action openTeam = act(TEXTS.text("packingView.openTeam"), "team", () -> session.reveal(thing()));
        getViewSite().getActionBars().getToolBarManager().add(fix);
        getViewSite().getActionBars().getToolBarManager().add(openTeam);
        MenuManager context = new MenuManager();
        context.add(fix);
        context.add(openTeam);
        tree.getTree().setMenu(context.createContextMenu(tree.getTree()));
    }

    private void fixChosen() {
        Optional.ofNullable((WeakPoints.Line) tree.getStructuredSelection().getFirstElement()).flatMap(WeakPoints.Line::fix)
                .ifPresent(fix -> session.execute(fix.command(session.editingDomain(), session.event())));
    }

    @Override
    protected void show(Team team) {
        session.computed().ifPresentOrElse(computed -> reckon(team, computed),
                () -> pages.say(TEXTS.text("resilience.computing"), TEXTS.text("resilience.computing.wait")));
    }

    @Override
    public void computed(EventSession computing, Computed computed) {
        if (thing() != null) {
            reckon(thing(), computed);
        }
    }

    private void reckon(Team team, Computed computed) {
        computed.snapshot().getTeams().stream().filter(each -> each.getId().equals(team.getId())).findFirst().ifPresent(
                then -> reckoning.run(monitor -> WeakPoints.of(then, computed.outlook()), this::say, failure -> { }));
    }

    private void say(WeakPoints points) {
        if (thing() == null || !points.teamId().equals(thing().getId()) || tree.getTree().isDisposed()) {
            return;
        }
        summary.setText(points.summary());
        summary.setToolTipText(points.summary());
        if (points.lines().isEmpty()) {
            pages.say(TEXTS.text("resilience.noWork"), TEXTS.text("resilience.noWork.plan"));
            return;
        }
        tree.getTree().setRedraw(false);
        tree.setInput(points.lines());
        tree.expandAll();
        if (tree.getStructuredSelection().isEmpty()) {
            tree.getTree().setSelection(tree.getTree().getItem(0));
        }
        tree.getTree().setRedraw(true);
        closing.setText(points.closing().stream().collect(Collectors.joining("\n\n")));
        pages.showContent(true);
    }

    @Override
    public void dispose() {
        reckoning.stop();
        super.dispose();
    }

    private static final class Lines implements ITreeContentProvider {

        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object line) {
            return ((WeakPoints.Line) line).parts().toArray();
        }

        @Override
        public Object getParent(Object line) {
            return null;
        }

        @Override
        public boolean hasChildren(Object line) {
            return !((WeakPoints.Line) line).parts().isEmpty();
        }
    }
}
