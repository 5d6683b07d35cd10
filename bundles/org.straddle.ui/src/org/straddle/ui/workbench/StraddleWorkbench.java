package org.straddle.ui.workbench;

import org.eclipse.jface.window.Window;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.straddle.ui.folder.LeaveEvent;
import org.straddle.ui.session.EventSession;

/** One window, one perspective; keeps its layout between runs. */
public final class StraddleWorkbench extends WorkbenchAdvisor {

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
        CollectionsLoader.useOnThisThread();
        Window.setDefaultImages(ApplicationImages.all());
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return PlanPerspective.ID;
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
    }

    @Override
    public boolean preShutdown() {
        return LeaveEvent.ask();
    }

    @Override
    public void postShutdown() {
        EventSession.current().close();
    }
}
