package org.straddle.ui.kit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Team;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.parts.TableFrame;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/**
 * What the kit of a team can do for its plan: each way of working, what ends it, and one fix for each that has one. Follows
 * a team or a stop that is selected elsewhere.
 */
public final class ResilienceView extends TeamAnswerView<WeakPoints> {

    private static final Catalogue TEXTS = Catalogue.of(ResilienceView.class);

    public static final String ID = "org.straddle.ui.kit.resilience";

    private final EventSession session = session();
    private TreeViewer tree;
    private Text closing;

    /** A view that is so many times as wide as high is low. */
    private static final int LOW = 3;

    public ResilienceView() {
        super(TEXTS.text("resilience.makeTeam"), TEXTS.text("resilience.reckoning"), TEXTS.text("resilience.reckoning.failed"));
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
    SashForm answers(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        Composite frame = new TableFrame(sash);
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        tree.getTree().setHeaderVisible(true);
        OnceSized.show(tree.getTree());
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
        sash.setWeights(65, 35);
        // Beside each other where the view is low: one above the other, the tree would have no row.
        sash.addControlListener(ControlListener.controlResizedAdapter(resized ->
                sash.setOrientation(sash.getSize().x > LOW * sash.getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL)));
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
                        : shown.fix().isPresent() ? Icons.image("fix") : null;
            }
        });
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, weight * 6, true));
    }

    @Override
    protected void equip(Composite content) {
        super.equip(content);
        Action fix = act(TEXTS.text("resilience.apply"), "fix", this::fixChosen);
        Action openTeam = act(TEXTS.text("packingView.openTeam"), "team", () -> {
            if (thing() != null) {
                session.reveal(thing());
            }
        });
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
    WeakPoints answer(Team team, Computed computed) {
        return WeakPoints.of(team, computed.outlook());
    }

    @Override
    String teamId(WeakPoints points) {
        return points.teamId();
    }

    @Override
    void say(WeakPoints points, Computed computed) {
        sumUp(points.summary());
        if (points.lines().isEmpty()) {
            answerPages().say(TEXTS.text("resilience.noWork"), TEXTS.text("resilience.noWork.plan"));
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
        answerPages().showContent(true);
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
