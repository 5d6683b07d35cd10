package org.straddle.ui.map;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.handlers.IHandlerService;

/** Toolbar, menus and commands of the map. */
final class MapActions {

    static final String CONTEXT = "org.straddle.ui.map.context";

    private final IHandlerService handlers;
    private final MapCanvas map;

    /** @param deeds what needs more than the map: dialogs and files */
    MapActions(IViewSite site, MapHands hands, MapBoard board, Deeds deeds) {
        handlers = site.getService(IHandlerService.class);
        map = hands.map();
        IAction in = action("zoomIn", "Zoom &in", "Larger (also + and the wheel)", () -> map.zoom(MapKeys.ZOOM));
        IAction out = action("zoomOut", "Zoom &out", "Smaller (also - and the wheel)", () -> map.zoom(1 / MapKeys.ZOOM));
        IAction all = action("fitAll", "Whole &event", "Show the whole event (also 0)", map::fitAll);
        IAction one = action("fitSelection", "&Selection", "Show the selected site, or the reach of the pass (also F)",
                map::fitSelection);
        IAction goTo = action("goTo", "&Go to…", "Go to a position or a locator, or type where the site is (also G)",
                deeds::goTo);
        IAction fresh = action("newSite", "&New site (N)", "Place a new site in the middle of the map (also N)", hands::newSite);
        IAction move = action("move", "&Move site (M)", "Move the selected site (also M, or drag it)", hands::move);
        IAction recentre = action("recentre", "&Centre here",
                "Lay the map anew around the middle of the window; the whole event brings it back", deeds::recentre);
        IAction picture = action("picture", "Save as &picture…", "Save what is in sight as a picture", deeds::picture);
        IAction page = action("page", "Save as p&age…", "Save what is in sight as a page for the brief", deeds::page);
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
        Action layers = new Action("&Layers", IAction.AS_CHECK_BOX) {
            @Override
            public void run() {
                board.listLayers(!board.listsLayers());
                setChecked(board.listsLayers());
            }
        };
        layers.setImageDescriptor(ResourceLocator.imageDescriptorFromBundle(MapActions.class, "icons/layers.svg").orElse(null));
        layers.setToolTipText("Show the list of layers");
        layers.setChecked(true);
        return registered("layers", layers);
    }

    private IAction action(String name, String text, String tip, Runnable run) {
        Action action = new Action(text, ResourceLocator.imageDescriptorFromBundle(MapActions.class,
                "icons/" + name + ".svg").orElse(null)) {
            @Override
            public void run() {
                if (map.contents().isPresent()) {
                    run.run();
                }
            }
        };
        action.setToolTipText(tip);
        return registered(name, action);
    }

    private IAction registered(String name, IAction action) {
        action.setActionDefinitionId("org.straddle.ui.map." + name);
        handlers.activateHandler(action.getActionDefinitionId(), new ActionHandler(action));
        return action;
    }
}
