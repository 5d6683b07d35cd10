package org.straddle.ui.findings;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.handlers.IHandlerService;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Tally;
import org.straddle.model.Acceptance;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.ThingText;

/** What is wrong, gravest first; leads to the thing, mends it, or accepts it with a reason. */
public final class FindingsView extends SessionView<FindingsView.Table> {

    public static final String ID = "org.straddle.ui.findings";

    private final EventSession session = session();
    private final FindingFilter filter = new FindingFilter();
    private List<Finding> findings = List.of();

    /** The filter line with the counts, and the table under it. */
    record Table(Label tally, TableViewer viewer) {

        void tell(String words) {
            tally.setText(words);
            tally.requestLayout();
        }
    }

    public FindingsView() {
        super("Findings appear here when an event is open.");
    }

    @Override
    protected void equip(Table content) {
        TableViewer viewer = content.viewer();
        getSite().setSelectionProvider(viewer);
        viewer.addOpenListener(opening -> reveal());
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
        getSite().registerContextMenu(menu, viewer);
        tools(getViewSite().getActionBars().getToolBarManager());
        handle("org.straddle.ui.mend", this::mend);
        handle("org.straddle.ui.accept", this::accept);
    }

    @Override
    public void setFocus() {
        pages().content().viewer().getControl().setFocus();
    }

    @Override
    public void opened(EventSession opened) {
        findings = List.of();
        show();
    }

    @Override
    public void closed(EventSession closed) {
        findings = List.of();
        super.closed(closed);
    }

    @Override
    public void computing(EventSession from) {
        show();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        findings = computed.findings();
        show();
    }

    private void show() {
        boolean fresh = session.computed().isEmpty();
        pages().content().tell(Tally.of(findings) + (session.computing() ? " (checking again…)" : ""));
        if (fresh) {
            pages().say("Checking…", "Passes and findings are being worked out.");
        } else if (findings.isEmpty()) {
            pages().say("No findings.", "Every rule was checked and none has anything to say. Surveys, weather and"
                    + " people may still know better.");
        } else {
            Optional<String> chosen = chosen().map(Finding::key);
            pages().content().viewer().setInput(findings.toArray());
            findings.stream().filter(finding -> chosen.filter(finding.key()::equals).isPresent()).findFirst()
                    .ifPresent(same -> pages().content().viewer().setSelection(new StructuredSelection(same)));
            pages().showContent(true);
        }
    }

    @Override
    protected Table content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(0, 8, 3, 0).spacing(10, 3)
                .create());
        Text words = new Text(body, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        words.setMessage("Show findings with these words");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        Label tally = new Label(body, SWT.NONE);
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(halves);
        Composite frame = new Composite(halves, SWT.NONE);
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.addFilter(filter);
        ColumnViewerToolTipSupport.enableFor(viewer);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        column(viewer, columns, "Severity", 8, 100, FindingsView::severityWord);
        column(viewer, columns, "Finding", 58, 300, Finding::sentence);
        column(viewer, columns, "Where", 20, 120, FindingsView::where);
        column(viewer, columns, "Rule", 14, 100, Finding::rule);
        FindingDetail detail = new FindingDetail(halves, session::reveal, this::mend, this::accept);
        halves.setWeights(72, 28);
        viewer.addSelectionChangedListener(choice -> detail.show(
                (Finding) choice.getStructuredSelection().getFirstElement()));
        words.addModifyListener(change -> {
            filter.words(words.getText());
            viewer.refresh();
        });
        return new Table(tally, viewer);
    }

    private static void column(TableViewer viewer, TableColumnLayout columns, String title, int weight, int least,
            Function<Finding, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, least));
        boolean first = title.equals("Severity");
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((Finding) row);
            }

            @Override
            public Image getImage(Object row) {
                Finding finding = (Finding) row;
                return !first ? null : finding.accepted().isPresent() ? Icons.image("accepted")
                        : Icons.of(finding.severity());
            }

            @Override
            public Color getForeground(Object row) {
                return ((Finding) row).accepted().isPresent()
                        ? viewer.getTable().getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY) : null;
            }

            @Override
            public String getToolTipText(Object row) {
                return tip((Finding) row);
            }
        });
    }

    private static String severityWord(Finding finding) {
        return finding.accepted().isPresent() ? "accepted" : finding.severity().label();
    }

    private static String where(Finding finding) {
        return String.join(", ", finding.objects().stream().map(ThingText::of).toList());
    }

    private static String tip(Finding finding) {
        return finding.sentence() + finding.mend().map(mend -> "\nMend (Ctrl+1): " + mend.label()).orElse("")
                + finding.accepted().map(acceptance -> "\nAccepted by " + acceptance.getBy() + ": "
                        + acceptance.getReason()).orElse("");
    }

    private void tools(IToolBarManager bar) {
        for (Severity severity : Severity.values()) {
            bar.add(toggle("Show " + (severity == Severity.ADVICE ? "advice" : severity.label() + "s"),
                    severity.label(), true, on -> filter.show(severity, on)));
        }
        bar.add(new Separator());
        bar.add(toggle("Show accepted findings too", "accepted", false, filter::showAccepted));
    }

    private Action toggle(String tip, String icon, boolean checked, Consumer<Boolean> set) {
        Action action = new Action(tip, IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                set.accept(isChecked());
                pages().content().viewer().refresh();
            }
        };
        action.setImageDescriptor(Icons.descriptor(icon));
        action.setChecked(checked);
        return action;
    }

    private void fill(IMenuManager menu) {
        chosen().ifPresent(finding -> {
            for (Identified thing : finding.objects()) {
                menu.add(new Act("Show " + ThingText.of(thing).replace("&", "&&"), "open",
                        () -> session.reveal(thing)));
            }
            menu.add(new Separator());
            finding.mend().ifPresent(mend -> menu.add(new Act("&Mend: " + mend.label() + "\tCtrl+1", "mend",
                    this::mend)));
            if (finding.accepted().isEmpty()) {
                menu.add(new Act("&Accept with a reason…\tCtrl+2", "accepted", this::accept));
            } else {
                menu.add(new Act("&Withdraw acceptance", "remove", () -> withdraw(finding)));
            }
        });
    }

    private void handle(String command, Runnable run) {
        getSite().getService(IHandlerService.class).activateHandler(command, new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                run.run();
                return null;
            }
        });
    }

    private Optional<Finding> chosen() {
        return Optional.ofNullable((Finding) pages().content().viewer().getStructuredSelection().getFirstElement());
    }

    private void reveal() {
        chosen().flatMap(finding -> finding.objects().stream().findFirst()).ifPresent(session::reveal);
    }

    private void mend() {
        chosen().flatMap(Finding::mend).ifPresent(mend -> session.execute(Edit.together(mend.label(),
                List.of(mend.command(session.editingDomain(), session.event())))));
    }

    private void accept() {
        chosen().filter(finding -> finding.accepted().isEmpty()).ifPresent(finding -> {
            AcceptDialog dialog = new AcceptDialog(getSite().getShell(), finding);
            if (dialog.open() == AcceptDialog.OK) {
                Acceptance acceptance = finding.acceptance(dialog.reason(), dialog.name(), Instant.now());
                session.execute(Edit.add(session.editingDomain(), session.event(), Literals.EVENT__ACCEPTANCES,
                        acceptance, "acceptance"));
            }
        });
    }

    private void withdraw(Finding finding) {
        Event event = session.event();
        List<Acceptance> same = event.getAcceptances().stream()
                .filter(acceptance -> finding.key().equals(acceptance.getFinding())).toList();
        session.execute(Edit.remove(session.editingDomain(), event, Literals.EVENT__ACCEPTANCES, same,
                "acceptance"));
    }
}
