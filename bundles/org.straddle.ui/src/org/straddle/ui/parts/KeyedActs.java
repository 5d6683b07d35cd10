package org.straddle.ui.parts;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.commands.ActionHandler;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/**
 * Makes the actions of a view suite that keys are bound to: a key sets off a command of the workbench, and the command the
 * action while its view is active.
 */
public final class KeyedActs {

    private final Class<?> suite;
    private final IHandlerService handlers;

    /**
     * @param suite a class of it: its package begins the ids of the suite's commands, and its bundle has the icons
     * @param site  of the view
     */
    public KeyedActs(Class<?> suite, IServiceLocator site) {
        this.suite = suite;
        this.handlers = site.getService(IHandlerService.class);
    }

    /** An action with the icon, and for the command, of a name. */
    public IAction of(String name, String text, String tip, Runnable run) {
        return bound(name, act(name, text, tip, run));
    }

    /** The same for no command yet. */
    public IAction act(String icon, String text, String tip, Runnable run) {
        Action action = new Action(text, icon(icon)) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setToolTipText(tip);
        return action;
    }

    /** An icon of the suite; null when it has none of that name. */
    public ImageDescriptor icon(String name) {
        return ResourceLocator.imageDescriptorFromBundle(suite, "icons/" + name + ".svg").orElse(null);
    }

    /** Lets a command of the suite set off an action. */
    public IAction bound(String name, IAction action) {
        return boundTo(suite.getPackageName() + "." + name, action);
    }

    /** The same with any command of the workbench, by its id. */
    public IAction boundTo(String command, IAction action) {
        action.setActionDefinitionId(command);
        handlers.activateHandler(command, new ActionHandler(action));
        return action;
    }
}
