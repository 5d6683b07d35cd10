package org.straddle.ui.workbench;

import org.eclipse.jface.window.Window;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.straddle.ui.folder.LeaveEvent;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.session.EventSession;

/** One window, which shows a start page or an event; keeps its layout between runs. */
public final class StraddleWorkbench extends WorkbenchAdvisor {

    private final OpenDocuments documents;

    public StraddleWorkbench() {
        this(new OpenDocuments());
    }

    StraddleWorkbench(OpenDocuments documents) {
        this.documents = documents;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
        CollectionsLoader.useOnThisThread();
        Window.setDefaultImages(ApplicationImages.all());
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return StartPerspective.ID;
    }

    @Override
    public String getMainPreferencePageId() {
        return null;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new StraddleWindow(configurer);
    }

    @Override
    public void postStartup() {
        StartArguments.openNamedEvent();
        documents.openWith(path -> OpenEvent.open(PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell(), path));
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (!EventSession.current().isOpen() && window != null) {
            Welcome.show(window);
        }
    }

    @Override
    public boolean preShutdown() {
        if (!LeaveEvent.ask()) {
            return false;
        }
        // The next start begins without an event, so without its views.
        EventSession.current().close();
        return true;
    }

    @Override
    public void postShutdown() {
        EventSession.current().close();
    }
}
