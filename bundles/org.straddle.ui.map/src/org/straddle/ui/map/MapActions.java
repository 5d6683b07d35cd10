package org.straddle.ui.map;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.IViewSite;
import org.straddle.ui.parts.KeyedActs;
import org.straddle.words.Catalogue;

/** Toolbar, menus and commands of the map. */
final class MapActions {

    private static final Catalogue TEXTS = Catalogue.of(MapActions.class);

    static final String CONTEXT = "org.straddle.ui.map.context";

    private final KeyedActs acts;
    private final MapCanvas map;

    /** @param deeds what needs more than the map: dialogs and files */
    MapActions(IViewSite site, MapHands hands, MapBoard board, Deeds deeds) {
        acts = new KeyedActs(MapActions.class, site);
        map = hands.map();
        IAction in = action("zoomIn", TEXTS.text("mapActions.zoom"), TEXTS.text("mapActions.largerAlsoWheel"), () -> map.zoom(MapKeys.ZOOM));
        IAction out = action("zoomOut", TEXTS.text("mapActions.zoomOut"), TEXTS.text("mapActions.smallerAlsoWheel"), () -> map.zoom(1 / MapKeys.ZOOM));
        IAction all = action("fitAll", TEXTS.text("mapActions.wholeEvent"), TEXTS.text("mapActions.showWholeEvent"), map::fitAll);
        IAction one = action("fitSelection", TEXTS.text("mapActions.selection"), TEXTS.text("mapActions.showSelectedSite"),
                map::fitSelection);
        IAction goTo = action("goTo", TEXTS.text("mapActions.go"), TEXTS.text("mapActions.goPositionLocator"),
                deeds::goTo);
        IAction fresh = action("newSite", TEXTS.text("mapActions.newSite"), TEXTS.text("mapActions.placeNewSite"), hands::newSite);
        IAction move = action("move", TEXTS.text("mapActions.moveSite"), TEXTS.text("mapActions.moveSelectedSite"), hands::move);
        IAction recentre = action("recentre", TEXTS.text("mapActions.centreHere"),
                TEXTS.text("mapActions.layMapAnew"), deeds::recentre);
        IAction picture = action("picture", TEXTS.text("mapActions.saveAsPicture"), TEXTS.text("mapActions.saveWhatSight"), deeds::picture);
        IAction page = action("page", TEXTS.text("mapActions.savePage"), TEXTS.text("mapActions.savePage.tooltip"), deeds::page);
        IAction layers = layers(board);
        IToolBarManager bar = site.getActionBars().getToolBarManager();
        add(bar, in, out, all, one, goTo, null, fresh, move, null, layers, picture, page);
        IMenuManager menu = site.getActionBars().getMenuManager();
        add(menu, in, out, all, one, goTo, recentre, null, fresh, move, null, layers, null, picture, page);
        MenuManager context = new MenuManager();
        add(context, fresh, move, null, one, goTo, recentre, null, picture, page);
        Menu pop = context.createContextMenu(map.control());
        map.control().setMenu(pop);
    }

    /** What needs more than the map. */
    interface Deeds {
        void goTo();

        void recentre();

        void picture();

        void page();
    }

    private static void add(IContributionManager to, IAction... actions) {
        for (IAction action : actions) {
            if (action == null) {
                to.add(new Separator());
            } else {
                to.add(action);
            }
        }
    }

    private IAction layers(MapBoard board) {
        Action layers = new Action(TEXTS.text("mapActions.layers"), IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                board.listLayers(!board.listsLayers());
                setChecked(board.listsLayers());
            }
        };
        layers.setImageDescriptor(acts.icon("layers"));
        layers.setToolTipText(TEXTS.text("mapActions.showListLayers"));
        layers.setChecked(true);
        return acts.bound("layers", layers);
    }

    private IAction action(String name, String text, String tip, Runnable run) {
        return acts.of(name, text, tip, () -> {
            if (map.contents().isPresent()) {
                run.run();
            }
        });
    }
}
