package org.straddle.ui.importing;

import java.nio.file.Path;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;

/** Asks for a file of sites, what its columns mean and whether what follows is right, and takes it over as one step. */
public final class ImportSites {

    private ImportSites() {
    }

    public static void ask(Shell shell) {
        ask(shell, null);
    }

    /** @param file to begin with; may be null */
    public static void ask(Shell shell, Path file) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        WizardDialog dialog = new WizardDialog(shell, new SiteWizard(session, file));
        dialog.setPageSize(900, 440);
        ImportFilePage.readOnTheWay(dialog);
        dialog.open();
    }
}
