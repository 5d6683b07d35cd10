package org.straddle.ui.importing;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.chasers.ChaserList;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Two steps to import a list of chasers: the file, what will change. */
final class ChaserWizard extends ImportWizard<ChaserDraft> {

    private static final Catalogue TEXTS = Catalogue.of(ChaserWizard.class);

    private static final String PATTERNS = "*.csv;*.CSV;*.tsv;*.TSV;*.txt;*.TXT;*.eml;*.mbox";

    ChaserWizard(EventSession session) {
        super(TEXTS.text("chaserWizard.title"), session, new ChaserDraft(session.event()));
    }

    @Override
    public void addPages() {
        addPage(new ImportFilePage(new ImportFilePage.Words(TEXTS.text("chaserWizard.title"), TEXTS.text("chaserWizard.explanation"),
                TEXTS.text("chaserWizard.help"), TEXTS.text("chaserWizard.formats"), PATTERNS), this::read, null));
        addPage(new ImportPreviewPage(draft(), TEXTS.text("chaserWizard.chaser")));
    }

    private List<String> read(Path chosen, IProgressMonitor monitor) throws ReadException {
        draft().take(ChaserList.read(SourceFile.read(chosen)));
        return List.of();
    }
}
