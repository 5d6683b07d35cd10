package org.straddle.ui.importing;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;

/** Asks for a list of chasers, shows what each line of it would change, and takes it over as one step. */
public final class ImportChasers {

    private ImportChasers() {
    }

    public static void ask(Shell shell) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        WizardDialog dialog = new WizardDialog(shell, new ChaserWizard(session));
        dialog.setPageSize(900, 440);
        ImportFilePage.readOnTheWay(dialog);
        dialog.open();
    }
}
