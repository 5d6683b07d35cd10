package org.straddle.ui.importing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.wizard.Wizard;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.model.Site;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Two steps to import a forecast: the file, what will change. */
final class ForecastWizard extends Wizard {

    private static final Catalogue TEXTS = Catalogue.of(ForecastWizard.class);

    private static final String PATTERNS = "*.csv;*.CSV;*.tsv;*.TSV;*.txt;*.TXT";

    private final EventSession session;
    private final ForecastDraft draft;

    ForecastWizard(EventSession session, Optional<Site> site) {
        this.session = session;
        this.draft = new ForecastDraft(session.event(), site);
        setWindowTitle(TEXTS.text("forecastWizard.title"));
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        addPage(new ImportFilePage(new ImportFilePage.Words(TEXTS.text("forecastWizard.title"), TEXTS.text("forecastWizard.explanation"),
                TEXTS.text("forecastWizard.help"), TEXTS.text("forecastWizard.formats"), PATTERNS), this::read, null));
        addPage(new ImportPreviewPage(draft, TEXTS.text("forecastWizard.day")));
    }

    private List<String> read(Path chosen, IProgressMonitor monitor) throws ReadException {
        draft.take(SourceFile.read(chosen));
        return List.of();
    }

    /** Only from the preview: nobody imports unseen. */
    @Override
    public boolean canFinish() {
        return getContainer().getCurrentPage() instanceof ImportPreviewPage && draft.isReady();
    }

    @Override
    public boolean performFinish() {
        return session.execute(draft.found().command(session.editingDomain()));
    }
}
