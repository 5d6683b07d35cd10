package org.straddle.cli;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

/** Makes an edit by the same commands as the workbench, so that there is one way to change an event. */
final class Edit {

    /** What makes the command, once there is a domain to make it in. */
    @FunctionalInterface
    interface Maker<X extends Exception> {
        Command in(EditingDomain domain) throws X;
    }

    private Edit() {
    }

    static <X extends Exception> void execute(Maker<X> maker) throws X {
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
                new BasicCommandStack());
        Command command = maker.in(domain);
        if (command.canExecute()) {
            domain.getCommandStack().execute(command);
        }
    }
}
