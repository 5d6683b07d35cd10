package org.straddle.ui.workbench;

import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.straddle.model.Event;
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
        session.addListener(new Welcome(window));
    }

    @Override
    public void opened(EventSession session) {
        IWorkbenchPage page = window.getActivePage();
        show(window, PlanPerspective.ID);
        for (IEditorReference editor : page.getEditorReferences()) {
            if (WelcomePage.ID.equals(editor.getId())) {
                page.closeEditors(new IEditorReference[] {editor}, false);
            }
        }
        if (isNew(session.event())) {
            session.reveal(session.event());
        } else {
            page.setEditorAreaVisible(false);
        }
    }

    /** Nothing is planned yet: the form of the event is where the work begins. */
    private static boolean isNew(Event event) {
        return event.getPlan() == null || event.getPlan().getStops().isEmpty();
    }

    /** Where another event takes the place of this one, the page does not flash up in between. */
    @Override
    public void closed(EventSession session) {
        if (!session.isOpening() && window.getActivePage() != null && !window.getWorkbench().isClosing()) {
            show(window);
        }
    }

    /** Shows the page in the window, which has no event. */
    static void show(IWorkbenchWindow window) {
        show(window, StartPerspective.ID);
        try {
            window.getActivePage().openEditor(WelcomePage.INPUT, WelcomePage.ID).setFocus();
        } catch (PartInitException failure) {
            Problem.log(TEXTS.text("welcome.failed"), failure);
        }
    }

    private static void show(IWorkbenchWindow window, String perspective) {
        window.getActivePage().setPerspective(window.getWorkbench().getPerspectiveRegistry()
                .findPerspectiveWithId(perspective));
    }
}
