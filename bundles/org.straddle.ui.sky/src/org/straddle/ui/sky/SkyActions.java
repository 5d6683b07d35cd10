package org.straddle.ui.sky;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.handlers.IHandlerService;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Toolbar, view menu and keys of the sky views. */
final class SkyActions {

    private static final Catalogue TEXTS = Catalogue.of(SkyActions.class);

    static final String CONTEXT = "org.straddle.ui.sky.context";

    private final IViewSite site;

    SkyActions(IViewSite site) {
        this.site = site;
    }

    /** @param export what printing or exporting does in this view */
    void add(Runnable export) {
        IAction earlier = action("earlier", TEXTS.text("skyActions.earlierPass"), TEXTS.text("skyActions.passBeforeBird"),
                () -> step(-1));
        IAction later = action("later", TEXTS.text("skyActions.laterPass"), TEXTS.text("skyActions.nextPassBird"),
                () -> step(1));
        IAction print = action("export", TEXTS.text("skyActions.printExport"), TEXTS.text("skyActions.pagePrintPicture"), export);
        for (IContributionManager bar : new IContributionManager[] {site.getActionBars().getToolBarManager(),
            site.getActionBars().getMenuManager()}) {
            bar.add(earlier);
            bar.add(later);
            bar.add(new Separator());
            bar.add(print);
        }
    }

    private static void step(int later) {
        EventSession.current().computed().ifPresent(known -> ChosenPass.current().step(known.outlook(), later));
    }

    private IAction action(String name, String text, String tip, Runnable run) {
        Action action = new Action(text, ResourceLocator.imageDescriptorFromBundle(SkyActions.class,
                "icons/" + name + ".svg").orElse(null)) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setToolTipText(tip);
        action.setActionDefinitionId("org.straddle.ui.sky." + name);
        site.getService(IHandlerService.class).activateHandler(action.getActionDefinitionId(),
                new ActionHandler(action));
        return action;
    }
}
