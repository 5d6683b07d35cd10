package org.straddle.ui.workbench;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** Only what views plug their own behaviour into; menus and tools are declared in plugin.xml. */
final class StraddleActionBars extends ActionBarAdvisor {

    StraddleActionBars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        register(ActionFactory.DELETE.create(window));
        register(ActionFactory.CUT.create(window));
        register(ActionFactory.COPY.create(window));
        register(ActionFactory.PASTE.create(window));
        register(ActionFactory.SELECT_ALL.create(window));
    }
}
