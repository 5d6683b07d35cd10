package org.straddle.ui.importing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.model.Site;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Two steps to import a forecast: the file, what will change. */
final class ForecastWizard extends ImportWizard<ForecastDraft> {

    private static final Catalogue TEXTS = Catalogue.of(ForecastWizard.class);

    private static final String PATTERNS = "*.csv;*.CSV;*.tsv;*.TSV;*.txt;*.TXT";

    ForecastWizard(EventSession session, Optional<Site> site) {
        super(TEXTS.text("forecastWizard.title"), session, new ForecastDraft(session.event(), site));
    }

    @Override
    public void addPages() {
        addPage(new ImportFilePage(new ImportFilePage.Words(TEXTS.text("forecastWizard.title"), TEXTS.text("forecastWizard.explanation"),
                TEXTS.text("forecastWizard.help"), TEXTS.text("forecastWizard.formats"), PATTERNS), this::read, null));
        addPage(new ImportPreviewPage(draft(), TEXTS.text("forecastWizard.day")));
    }

    private List<String> read(Path chosen, IProgressMonitor monitor) throws ReadException {
        draft().take(SourceFile.read(chosen));
        return List.of();
    }
}
