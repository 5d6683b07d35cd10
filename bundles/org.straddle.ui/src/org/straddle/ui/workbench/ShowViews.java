package org.straddle.ui.workbench;

import java.util.stream.Stream;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.views.IViewDescriptor;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** All views that are installed, from whatever suite: their ids begin with the name of the program. */
public final class ShowViews extends CompoundContributionItem {

    private static final Catalogue TEXTS = Catalogue.of(ShowViews.class);

    @Override
    protected IContributionItem[] getContributionItems() {
        MenuLetters letters = new MenuLetters(TEXTS.text("showViews.taken"));
        return Stream.of(PlatformUI.getWorkbench().getViewRegistry().getViews()).filter(ShowViews::isOurs)
                .sorted((a, b) -> a.getLabel().compareTo(b.getLabel()))
                .map(view -> new ActionContributionItem(show(view, letters.lettered(view.getLabel()))))
                .toArray(IContributionItem[]::new);
    }

    private static boolean isOurs(IViewDescriptor view) {
        return view.getId().startsWith("org.straddle.") || view.getId().equals(PlanPerspective.PROGRESS);
    }

    private static Action show(IViewDescriptor view, String label) {
        return new Action(label, view.getImageDescriptor()) {
            @Override
            public void run() {
                IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
                try {
                    page.showView(view.getId());
                } catch (PartInitException failure) {
                    Problem.show(page.getWorkbenchWindow().getShell(), TEXTS.text("showViews.failed",
                            "view", view.getLabel()),
                            failure);
                }
            }
        };
    }
}
