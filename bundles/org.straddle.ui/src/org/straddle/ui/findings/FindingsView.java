package org.straddle.ui.findings;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

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
public final class FindingsView extends SessionView<FindingsTable> {

    public static final String ID = "org.straddle.ui.findings";

    private final EventSession session = session();
    private final FindingFilter filter = new FindingFilter();
    private List<Finding> findings = List.of();

    public FindingsView() {
        super("Findings appear here when an event is open.");
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
    public void stopped(EventSession from) {
        show();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        findings = computed.findings();
        show();
    }

    private void show() {
        pages().content().tell(Tally.of(findings) + (session.computing() ? " (checking again…)" : ""));
        if (session.computed().isEmpty() && session.computing()) {
            pages().say("Checking…", "Passes and findings are being worked out.");
        } else if (session.computed().isEmpty()) {
            pages().say("Not checked.", "The check was stopped. Plan, Check now (F5) starts it again.");
        } else if (findings.isEmpty()) {
            pages().say("No findings.", "Every rule was checked and none has anything to say. Surveys, weather and"
                    + " people may still know better.");
        } else {
            pages().content().show(findings);
            pages().showContent(true);
        }
    }

    @Override
    protected FindingsTable content(Composite parent) {
        return new FindingsTable(parent, filter, new FindingDetail.Deeds(session::reveal, this::mend, this::accept));
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
        return pages().content().chosen();
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
