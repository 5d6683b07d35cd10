package org.straddle.ui.workbench;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Shows the welcome page while no event is open, and the event itself once one is. */
final class Welcome implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(Welcome.class);

    private final IWorkbenchWindow window;

    private Welcome(IWorkbenchWindow window) {
        this.window = window;
    }

    static void follow(EventSession session, IWorkbenchWindow window) {
        Welcome welcome = new Welcome(window);
        session.addListener(welcome);
        if (!session.isOpen()) {
            welcome.closed(session);
        }
    }

    @Override
    public void opened(EventSession session) {
        IWorkbenchPage page = window.getActivePage();
        for (IEditorReference editor : page.getEditorReferences()) {
            if (WelcomePage.ID.equals(editor.getId())) {
                page.closeEditors(new IEditorReference[] {editor}, false);
            }
        }
        session.reveal(session.event());
    }

    @Override
    public void closed(EventSession session) {
        IWorkbenchPage page = window.getActivePage();
        try {
            IEditorPart opened = page == null ? null : page.openEditor(WelcomePage.INPUT, WelcomePage.ID);
            if (opened != null) {
                opened.setFocus();
            }
        } catch (PartInitException failure) {
            Problem.log(TEXTS.text("welcome.failed"), failure);
        }
    }
}
