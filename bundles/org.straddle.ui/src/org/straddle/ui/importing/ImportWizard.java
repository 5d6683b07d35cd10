package org.straddle.ui.importing;

import java.util.List;

import org.eclipse.jface.wizard.Wizard;
import org.straddle.ui.session.EventSession;

/** Steps to import a file, the last of which shows what will change. */
abstract class ImportWizard<D extends PreviewedImport> extends Wizard {

    private final EventSession session;
    private final D draft;

    ImportWizard(String title, EventSession session, D draft) {
        this.session = session;
        this.draft = draft;
        setWindowTitle(title);
        setNeedsProgressMonitor(true);
    }

    D draft() {
        return draft;
    }

    /** Only from the preview: nobody imports unseen. */
    @Override
    public final boolean canFinish() {
        return getContainer().getCurrentPage() instanceof ImportPreviewPage && draft.isReady();
    }

    @Override
    public final boolean performFinish() {
        return session.execute(draft.command(session.editingDomain()));
    }
}
