package org.straddle.ui.workbench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** While no event is open: the welcome page and nothing else, since no view has anything to show. */
public final class StartPerspective implements IPerspectiveFactory {

    public static final String ID = "org.straddle.ui.perspective.start";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
    }
}
