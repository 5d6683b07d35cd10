package org.straddle.ui.importing;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;

/** What an import would do, for the last step before it is done. */
interface PreviewedImport {

    List<PreviewLine> lines();

    /** What all lines come to, a sentence. */
    String summary();

    int refusedLines();

    boolean changesNothing();

    /** What looks wrong in the file as a whole, a sentence; empty for nothing. */
    String doubt();

    boolean leavesOutRefused();

    void leaveOutRefused(boolean chosen);

    /** Whether the import may be done as it stands. */
    boolean isReady();

    /** The import as one step for undo; only when it is ready. */
    Command command(EditingDomain domain);
}
