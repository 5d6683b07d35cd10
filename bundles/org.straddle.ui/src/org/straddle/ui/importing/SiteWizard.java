package org.straddle.ui.importing;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.formats.Purpose;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Three steps to import sites: the file, what its columns mean, what will change. */
final class SiteWizard extends ImportWizard<SiteDraft> {

    private static final Catalogue TEXTS = Catalogue.of(SiteWizard.class);

    private final Path file;

    SiteWizard(EventSession session, Path file) {
        super(TEXTS.text("siteWizard.title"), session, new SiteDraft(session.event()));
        this.file = file;
    }

    @Override
    public void addPages() {
        addPage(new ImportFilePage(new ImportFilePage.Words(TEXTS.text("siteWizard.title"), TEXTS.text("siteWizard.explanation"),
                TEXTS.text("siteWizard.help"), Purpose.SITES.names(), Purpose.SITES.patterns()), this::read, file));
        addPage(new SiteMappingPage(draft()));
        addPage(new ImportPreviewPage(draft(), TEXTS.text("siteWizard.site")));
    }

    private List<String> read(Path chosen, IProgressMonitor monitor) throws ReadException {
        SourceTable table = SourceTable.read(chosen, monitor);
        draft().take(table);
        draft().preview();
        return table.remarks();
    }
}
