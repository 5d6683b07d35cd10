package org.straddle.cli;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.store.EventFolderException;

/** Makes an edit by the same commands as the workbench, so that there is one way to change an event. */
final class Edit {

    /** What makes the command, once there is a domain to make it in. */
    @FunctionalInterface
    interface Maker {
        Command in(EditingDomain domain) throws EventFolderException;
    }

    private Edit() {
    }

    static void execute(Maker maker) throws EventFolderException {
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
                new BasicCommandStack());
        Command command = maker.in(domain);
        if (command.canExecute()) {
            domain.getCommandStack().execute(command);
        }
    }
}
