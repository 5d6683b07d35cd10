package org.straddle.ui.importing;

import java.util.Optional;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.model.Site;
import org.straddle.ui.session.EventSession;

/** Asks for a forecast, shows what it would change on each day, and takes it over as one step. */
public final class ImportForecasts {

    private ImportForecasts() {
    }

    /** For the site that lies nearest to the place of the forecast. */
    public static void ask(Shell shell) {
        ask(shell, Optional.empty());
    }

    public static void ask(Shell shell, Site site) {
        ask(shell, Optional.of(site));
    }

    private static void ask(Shell shell, Optional<Site> site) {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        WizardDialog dialog = new WizardDialog(shell, new ForecastWizard(session, site));
        dialog.setPageSize(900, 440);
        ImportFilePage.readOnTheWay(dialog);
        dialog.open();
    }
}
