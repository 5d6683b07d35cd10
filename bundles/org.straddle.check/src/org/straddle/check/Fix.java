package org.straddle.check;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;

/** A change that would settle a finding, offered to the user. */
public interface Fix {

    /** What it does, for a button: "Remove the turn". */
    String label();

    /**
     * One command, undone as one. The finding came from a copy of the event, so the objects are looked
     * up by id; the command cannot be executed when they are gone.
     *
     * @param live the event being edited
     */
    Command command(EditingDomain domain, Event live);
}
