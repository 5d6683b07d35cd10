package org.straddle.ui.workbench;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.straddle.ui.folder.LeaveEvent;
import org.straddle.ui.parts.TabSelects;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/** The window: names the event and its unsaved changes in the title, and asks before it goes. */
final class StraddleWindow extends WorkbenchWindowAdvisor implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(StraddleWindow.class);

    StraddleWindow(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer bars) {
        return new StraddleActionBars(bars);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        window.setInitialSize(new Point(Math.min(1440, screen.width), Math.min(920, screen.height)));
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
        window.setShowPerspectiveBar(false);
        window.setShowMenuBar(true);
        window.setTitle("Straddle");
    }

    @Override
    public void postWindowCreate() {
        getWindowConfigurer().getWindow().getShell().setMaximized(true);
    }

    @Override
    public void postWindowOpen() {
        TabSelects.in(getWindowConfigurer().getWindow().getShell().getDisplay());
        EventSession session = EventSession.current();
        session.addListener(this);
        StraddleApplication.state().ifPresent(state -> session
                .addListener(new OneWindow(state, getWindowConfigurer().getWindow().getShell())));
        session.onReveal(new Reveal(getWindowConfigurer().getWindow()));
        closeEditorsOfLastRun();
        new StatusText(getWindowConfigurer().getActionBarConfigurer().getStatusLineManager()).follow(session);
        SessionCommands.activate(session, getWindowConfigurer().getWindow());
        Welcome.follow(session, getWindowConfigurer().getWindow());
        retitle(session);
    }

    /** Things are edited only while their event is open. */
    private void closeEditorsOfLastRun() {
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        if (page != null) {
            page.closeEditors(page.getEditorReferences(), false);
        }
    }

    @Override
    public boolean preWindowShellClose() {
        return PlatformUI.getWorkbench().getWorkbenchWindowCount() > 1 || LeaveEvent.ask();
    }

    @Override
    public void opened(EventSession session) {
        retitle(session);
    }

    @Override
    public void closed(EventSession session) {
        retitle(session);
    }

    @Override
    public void edited(EventSession session) {
        retitle(session);
    }

    private void retitle(EventSession session) {
        if (!session.isOpen()) {
            getWindowConfigurer().setTitle("Straddle");
            return;
        }
        String name = session.event().getName();
        getWindowConfigurer().setTitle(TEXTS.text("straddleWindow.title", "unsaved", session.dirty(),
                "name", name == null || name.isBlank() ? TEXTS.text("straddleWindow.unnamed") : name,
                "folder", session.folder().path(), "readonly", session.folder().isReadOnly()));
    }
}
