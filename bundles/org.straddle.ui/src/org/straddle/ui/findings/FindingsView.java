package org.straddle.ui.findings;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Tally;
import org.straddle.model.Acceptance;
import org.straddle.model.Identified;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.ui.guide.GuideView;
import org.straddle.ui.parts.Act;
import org.straddle.ui.parts.SessionView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** What is wrong, gravest first; leads to the thing, fixes it, or accepts it with a reason. */
public final class FindingsView extends SessionView<FindingsTable> {

    private static final Catalogue TEXTS = Catalogue.of(FindingsView.class);

    public static final String ID = "org.straddle.ui.findings";

    private final EventSession session = session();
    private final FindingFilter filter = new FindingFilter();
    private List<Finding> findings = List.of();

    public FindingsView() {
        super(TEXTS.text("findingsView.closed"));
    }

    @Override
    protected void equip(FindingsTable content) {
        TableViewer viewer = content.viewer();
        getSite().setSelectionProvider(viewer);
        viewer.addOpenListener(opening -> reveal());
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
        getSite().registerContextMenu(menu, viewer);
        tools(getViewSite().getActionBars().getToolBarManager());
        handle("org.straddle.ui.fix", finding -> finding.fix().isPresent(), this::fix);
        handle("org.straddle.ui.accept", FindingsView::open, this::accept);
        handle("org.straddle.ui.explain", finding -> true, this::explain);
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
        go();
    }

    @Override
    public void stopped(EventSession from) {
        go();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        findings = computed.findings();
        show();
    }

    /** A computation begins or ends; the findings in the table are still the last ones. */
    private void go() {
        if (findings.isEmpty()) {
            show();
        } else {
            tell();
        }
    }

    private void show() {
        if (session.computed().isEmpty() && session.computing()) {
            pages().say(TEXTS.text("findingsView.checking"), TEXTS.text("findingsView.checking.text"));
        } else if (session.computed().isEmpty()) {
            pages().say(TEXTS.text("findingsView.stopped"), TEXTS.text("findingsView.stopped.text"));
        } else if (findings.isEmpty()) {
            pages().say(TEXTS.text("findingsView.clean"), TEXTS.text("findingsView.clean.text"));
        } else {
            pages().content().show(findings);
            pages().showContent(true);
        }
        tell();
    }

    private void tell() {
        pages().content().tell(session.computing() ? TEXTS.text("findingsView.again", "tally", Tally.of(findings)) : Tally.of(findings).toString());
    }

    @Override
    protected FindingsTable content(Composite parent) {
        return new FindingsTable(parent, filter, new FindingDetail.Deeds(session::reveal, this::fix, this::accept,
                this::withdraw));
    }

    private void tools(IToolBarManager bar) {
        for (Severity severity : Severity.values()) {
            bar.add(toggle(TEXTS.text("findingsView.show",
                    "severity", severity.name()),
                    severity.word(), true, on -> filter.show(severity, on)));
        }
        bar.add(new Act(TEXTS.text("findingsView.explain.tooltip"), "findings", this::explain));
        bar.add(new Separator());
        bar.add(toggle(TEXTS.text("findingsView.accepted"), "accepted", false, filter::showAccepted));
    }

    private Action toggle(String tip, String icon, boolean checked, Consumer<Boolean> set) {
        Action action = new Action(tip, IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                set.accept(isChecked());
                pages().content().refilter();
            }
        };
        action.setImageDescriptor(Icons.descriptor(icon));
        action.setChecked(checked);
        return action;
    }

    private void fill(IMenuManager menu) {
        List<Finding> chosen = chosen();
        if (chosen.size() == 1) {
            for (Identified thing : chosen.get(0).objects()) {
                menu.add(new Act(TEXTS.text("findingsView.reveal", "thing", Naming.name(thing).replace("&", "&&")), "open",
                        () -> session.reveal(thing)));
            }
            menu.add(new Separator());
        }
        if (!chosen.isEmpty()) {
            menu.add(new Act(TEXTS.text("findingsView.explain"), "findings", this::explain));
        }
        List<Fix> fixes = chosen.stream().flatMap(finding -> finding.fix().stream()).toList();
        if (!fixes.isEmpty()) {
            menu.add(new Act(fixes.size() == 1
                    ? TEXTS.text("findingsView.fix", "fix", fixes.get(0).label().replace("&", "&&"))
                    : TEXTS.text("findingsView.fix.several", "count", fixes.size()), "fix", this::fix));
        }
        if (chosen.stream().anyMatch(FindingsView::open)) {
            menu.add(new Act(TEXTS.text("findingsView.accept"), "accepted", this::accept));
        }
        if (!chosen.stream().allMatch(FindingsView::open)) {
            menu.add(new Act(TEXTS.text("findingsView.withdraw"), "remove", this::withdraw));
        }
    }

    /** The command is offered while it fits one of the chosen findings. */
    private void handle(String command, Predicate<Finding> fits, Runnable run) {
        AbstractHandler handler = new AbstractHandler() {
            @Override
            public Object execute(ExecutionEvent event) {
                run.run();
                return null;
            }

            @Override
            public void setEnabled(Object context) {
                setBaseEnabled(chosen().stream().anyMatch(fits));
            }
        };
        pages().content().viewer().addSelectionChangedListener(choice -> handler.setEnabled(null));
        handler.setEnabled(null);
        getSite().getService(IHandlerService.class).activateHandler(command, handler);
    }

    private List<Finding> chosen() {
        return pages().content().chosen();
    }

    private static boolean open(Finding finding) {
        return finding.accepted().isEmpty();
    }

    private void reveal() {
        chosen().stream().flatMap(finding -> finding.objects().stream()).findFirst().ifPresent(session::reveal);
    }

    private void explain() {
        try {
            GuideView guide = (GuideView) getSite().getPage().showView(GuideView.ID);
            guide.show(chosen().stream().findFirst().map(Finding::rule).orElse(""));
        } catch (PartInitException e) {
            throw new IllegalStateException("the guide is declared in this bundle", e);
        }
    }

    private void fix() {
        session.execute(new Fixes(session.editingDomain(), session.event(), chosen()));
    }

    private void accept() {
        List<Finding> open = chosen().stream().filter(FindingsView::open).toList();
        AcceptDialog dialog = new AcceptDialog(getSite().getShell(), open);
        if (!open.isEmpty() && dialog.open() == AcceptDialog.OK) {
            Instant now = Instant.now();
            session.execute(Edit.together(TEXTS.text("findingsView.undo.accept", "count", open.size()), open.stream()
                    .map(finding -> Edit.add(session.editingDomain(), session.event(), Literals.EVENT__ACCEPTANCES,
                            finding.acceptance(dialog.reason(), dialog.name(), now)))
                    .toList()));
        }
    }

    private void withdraw() {
        List<Finding> accepted = chosen().stream().filter(finding -> !open(finding)).toList();
        Set<String> keys = accepted.stream().map(Finding::key).collect(Collectors.toSet());
        List<Acceptance> gone = session.event().getAcceptances().stream()
                .filter(acceptance -> keys.contains(acceptance.getFinding())).toList();
        session.execute(Edit.together(TEXTS.text("findingsView.undo.withdraw", "count", accepted.size()), List.of(Edit.remove(
                session.editingDomain(), session.event(), Literals.EVENT__ACCEPTANCES, gone))));
    }
}
