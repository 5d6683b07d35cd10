package org.straddle.ui.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.straddle.ui.findings.FindingsView;
import org.straddle.ui.folder.EventDialogs;
import org.straddle.ui.folder.LeaveEvent;
import org.straddle.ui.folder.SaveEvent;
import org.straddle.ui.importing.AddLayer;
import org.straddle.ui.importing.ImportChasers;
import org.straddle.ui.importing.ImportElements;
import org.straddle.ui.importing.ImportForecasts;
import org.straddle.ui.importing.ImportSites;
import org.straddle.ui.publishing.ExportSites;
import org.straddle.ui.publishing.PublishEvent;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.start.AddSeveral;
import org.straddle.ui.start.NewEventWizard;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Gives the commands of menus, tools and keys their meaning, and keeps what is possible up to date. */
final class SessionCommands implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(SessionCommands.class);

    private static final String UNDO = "org.eclipse.ui.edit.undo";
    private static final String REDO = "org.eclipse.ui.edit.redo";

    private final IWorkbenchWindow window;
    private final List<SessionCommand> all = new ArrayList<>();

    private SessionCommands(IWorkbenchWindow window) {
        this.window = window;
    }

    static void activate(EventSession session, IWorkbenchWindow window) {
        SessionCommands commands = new SessionCommands(window);
        BooleanSupplier always = () -> true;
        BooleanSupplier open = session::isOpen;
        commands.add("org.straddle.ui.open", always, EventDialogs::open);
        commands.add("org.straddle.ui.newEvent", always, NewEventWizard::ask);
        commands.add("org.straddle.ui.makeDemo", always, EventDialogs::makeDemo);
        commands.add("org.eclipse.ui.file.save", session::dirty, SaveEvent::save);
        commands.add("org.eclipse.ui.file.saveAs", open, EventDialogs::saveAs);
        commands.add("org.straddle.ui.resetLayout", open, commands::resetLayout);
        commands.add("org.straddle.ui.closeEvent", open, shell -> {
            if (LeaveEvent.ask()) {
                session.close();
            }
        });
        commands.add("org.straddle.ui.importElements", open, ImportElements::ask);
        commands.add("org.straddle.ui.importSites", open, ImportSites::ask);
        commands.add("org.straddle.ui.importForecast", open, ImportForecasts::ask);
        commands.add("org.straddle.ui.importChasers", open, ImportChasers::ask);
        commands.add("org.straddle.ui.addSeveral", open, AddSeveral::ask);
        commands.add("org.straddle.ui.exportSites", open, ExportSites::ask);
        commands.add("org.straddle.ui.addLayer", open, AddLayer::ask);
        commands.add("org.straddle.ui.propose", open, SessionCommands::searchForPlan);
        commands.add("org.straddle.ui.check", open, shell -> check(session, shell));
        commands.add("org.straddle.ui.publish", open, PublishEvent::ask);
        commands.add("org.eclipse.ui.help.aboutAction", always, AboutDialog::show);
        commands.add(UNDO, session::canUndo, shell -> session.undo(), () -> TEXTS.text("sessionCommands.undo", "what", named(session.undoLabel())));
        commands.add(REDO, session::canRedo, shell -> session.redo(), () -> TEXTS.text("sessionCommands.redo", "what", named(session.redoLabel())));
        session.addListener(commands);
        commands.refresh();
    }

    private static String named(String what) {
        return what.isEmpty() ? "none" : Character.toLowerCase(what.charAt(0)) + what.substring(1);
    }

    /** Checks, and shows what is found: whoever asks wants to read it. */
    private static void check(EventSession session, Shell shell) {
        session.computeNow();
        try {
            PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(FindingsView.ID);
        } catch (PartInitException failure) {
            Problem.show(shell, TEXTS.text("sessionCommands.nofindings"), failure);
        }
    }

    /** Shows where plans are searched for, judged and put in, and searches. */
    private static void searchForPlan(Shell shell) {
        try {
            if (PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(PlanSearch.VIEW)
                    instanceof PlanSearch planning) {
                planning.search();
            }
        } catch (PartInitException failure) {
            Problem.show(shell, TEXTS.text("sessionCommands.noplanning"), failure);
        }
    }

    private void resetLayout(Shell shell) {
        if (MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("sessionCommands.reset"),
                TEXTS.text("sessionCommands.reset.question"), SWT.NONE, TEXTS.text("sessionCommands.reset.yes"),
                TEXTS.text("sessionCommands.reset.no")) == 0) {
            window.getActivePage().resetPerspective();
        }
    }

    private void add(String command, BooleanSupplier possible, Consumer<Shell> action) {
        add(command, possible, action, null);
    }

    private void add(String command, BooleanSupplier possible, Consumer<Shell> action, Supplier<String> label) {
        SessionCommand handler = new SessionCommand(window.getShell(), possible, action, label);
        all.add(handler);
        window.getService(IHandlerService.class).activateHandler(command, handler);
    }

    @Override
    public void opened(EventSession session) {
        refresh();
    }

    @Override
    public void closed(EventSession session) {
        refresh();
    }

    @Override
    public void edited(EventSession session) {
        refresh();
    }

    @Override
    public void computed(EventSession session, Computed computed) {
        refresh();
    }

    private void refresh() {
        all.forEach(SessionCommand::refresh);
        if (window.getWorkbench().isClosing()) {
            return; // the window has no services any more
        }
        ICommandService labels = window.getService(ICommandService.class);
        labels.refreshElements(UNDO, null);
        labels.refreshElements(REDO, null);
        // Tools look again at what is enabled only when told to.
        window.getService(IEventBroker.class).send(UIEvents.REQUEST_ENABLEMENT_UPDATE_TOPIC,
                UIEvents.ALL_ELEMENT_ID);
    }
}
