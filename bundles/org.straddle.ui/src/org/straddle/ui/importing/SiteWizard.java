package org.straddle.ui.importing;

import java.nio.file.Path;

import org.eclipse.jface.wizard.Wizard;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Three steps to import sites: the file, what its columns mean, what will change. */
final class SiteWizard extends Wizard {

    private static final Catalogue TEXTS = Catalogue.of(SiteWizard.class);

    private final EventSession session;
    private final SiteDraft draft;
    private final Path file;

    SiteWizard(EventSession session, Path file) {
        this.session = session;
        this.draft = new SiteDraft(session.event());
        this.file = file;
        setWindowTitle(TEXTS.text("siteWizard.title"));
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        addPage(new SiteFilePage(draft, file));
        addPage(new SiteMappingPage(draft));
        addPage(new SitePreviewPage(draft));
    }

    /** Only from the preview: nobody imports unseen. */
    @Override
    public boolean canFinish() {
        return getContainer().getCurrentPage() instanceof SitePreviewPage && draft.isReady();
    }

    @Override
    public boolean performFinish() {
        return draft.preview().map(found -> session.execute(found.command(session.editingDomain()))).orElse(false);
    }
}
