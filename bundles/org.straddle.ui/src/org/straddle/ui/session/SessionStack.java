package org.straddle.ui.session;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** A command stack that can be marked saved as it was some edits ago: a save may end after the event was edited on. */
final class SessionStack extends BasicCommandStack {

    /** No state on the stack is the one on the disk; only the next save makes one so. */
    private static final int NOWHERE = -2;

    /** Where a save began: the command that was done last then, null for none. */
    record Mark(Command last) {
    }

    Mark mark() {
        return new Mark(top < 0 ? null : commandList.get(top));
    }

    /** The state at the mark is on the disk now; edits since then are not. */
    void savedAt(Mark mark) {
        int index = mark.last() == null ? -1 : commandList.indexOf(mark.last());
        saveIndex = mark.last() != null && index < 0 ? NOWHERE : index;
        notifyListeners();
    }
}
