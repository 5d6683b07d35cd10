package org.straddle.ui.sky;

import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IViewSite;
import org.straddle.ui.parts.KeyedActs;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Toolbar, view menu and keys of the sky views. */
final class SkyActions {

    private static final Catalogue TEXTS = Catalogue.of(SkyActions.class);

    static final String CONTEXT = "org.straddle.ui.sky.context";

    private final IViewSite site;
    private final KeyedActs acts;

    SkyActions(IViewSite site) {
        this.site = site;
        this.acts = new KeyedActs(SkyActions.class, site);
    }

    /** @param export what printing or exporting does in this view */
    void add(Runnable export) {
        IAction earlier = acts.of("earlier", TEXTS.text("skyActions.earlierPass"), TEXTS.text("skyActions.passBeforeBird"),
                () -> step(-1));
        IAction later = acts.of("later", TEXTS.text("skyActions.laterPass"), TEXTS.text("skyActions.nextPassBird"),
                () -> step(1));
        IAction print = acts.of("export", TEXTS.text("skyActions.printExport"), TEXTS.text("skyActions.pagePrintPicture"), export);
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
}
