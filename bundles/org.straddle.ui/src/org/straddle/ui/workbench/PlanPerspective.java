package org.straddle.ui.workbench;

import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.straddle.ui.explorer.ExplorerView;
import org.straddle.ui.findings.FindingsView;
import org.straddle.ui.passes.PassesView;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * Explorer left, day sheet over the forms in the middle, what the checks say below. A form that is open has half the
 * height; with none open, day sheet and findings share it. Suites that are not installed leave only a placeholder.
 */
public final class PlanPerspective implements IPerspectiveFactory {

    private static final Catalogue TEXTS = Catalogue.of(PlanPerspective.class);

    public static final String ID = "org.straddle.ui.perspective.plan";

    private static final int LOW_PX = 800;

    static final String PROGRESS = "org.eclipse.ui.views.ProgressView";
    static final String DAY_SHEET = "org.straddle.ui.daysheet.view";
    static final String MAP = "org.straddle.ui.map.view";
    static final String SPLIT = "org.straddle.ui.split";
    static final String PACKING = "org.straddle.ui.kit.packing";
    static final String SAFETY_NOTES = "org.straddle.ui.safety.notes";
    static final String GATES = "org.straddle.ui.safety.gate";
    static final String CALLS = "org.straddle.ui.safety.calls";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editors = layout.getEditorArea();
        layout.setEditorAreaVisible(false);
        layout.addView(ExplorerView.ID, IPageLayout.LEFT, 0.22f, editors);

        // The day sheet is beside the forms, not beside all else: it takes their room while none is open.
        IFolderLayout low = isLow() ? null : layout.createFolder("below", IPageLayout.BOTTOM, 0.7f, editors);
        IFolderLayout above = layout.createFolder("above", IPageLayout.TOP, isLow() ? 0.4f : 0.28f, editors);
        whenInstalled(above, DAY_SHEET);
        whenInstalled(above, MAP);
        whenInstalled(above, GATES);

        IFolderLayout below = low == null ? above : low;
        below.addView(FindingsView.ID);
        below.addView(PassesView.ID);
        whenInstalled(below, PlanSearch.VIEW);
        whenInstalled(below, SPLIT);
        whenInstalled(below, PACKING);
        whenInstalled(below, SAFETY_NOTES);
        whenInstalled(below, CALLS);
        below.addPlaceholder(PROGRESS);
        below.addPlaceholder("org.straddle.ui.*");
    }

    /** On a low screen three parts above each other show next to nothing: two have room. */
    private static boolean isLow() {
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        return screen.height < LOW_PX;
    }

    /** Brings the map to the front, where one is installed. */
    public static void showMap(IWorkbenchPage page) {
        if (isInstalled(MAP)) {
            try {
                page.showView(MAP, null, IWorkbenchPage.VIEW_VISIBLE);
            } catch (PartInitException e) {
                Problem.show(page.getWorkbenchWindow().getShell(), TEXTS.text("planPerspective.nomap"), e);
            }
        }
    }

    private static boolean isInstalled(String view) {
        return PlatformUI.getWorkbench().getViewRegistry().find(view) != null;
    }

    private static void whenInstalled(IFolderLayout folder, String view) {
        if (isInstalled(view)) {
            folder.addView(view);
        } else {
            folder.addPlaceholder(view);
        }
    }
}
