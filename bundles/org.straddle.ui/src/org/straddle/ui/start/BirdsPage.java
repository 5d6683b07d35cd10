package org.straddle.ui.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.exchange.formats.Purpose;
import org.straddle.exchange.start.EventStart;
import org.straddle.ui.start.NewEventDraft.Lines;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Files of element sets say which birds there are; where these are heard is written behind their names. */
final class BirdsPage extends LinesPage {

    private static final Catalogue TEXTS = Catalogue.of(BirdsPage.class);

    private Label told;

    BirdsPage(NewEventDraft draft) {
        super(draft, Lines.DOWNLINKS, EventStart::readDownlinks, TEXTS.text("birdsPage.title"),
                TEXTS.text("birdsPage.description"), TEXTS.text("birdsPage.example"));
    }

    @Override
    void above(Composite body) {
        Composite row = new Composite(body, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).create());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        Button button = new Button(row, SWT.PUSH);
        button.setText(TEXTS.text("birdsPage.file"));
        button.addListener(SWT.Selection, click -> choose());
        told = new Label(row, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(told);
        tell();
    }

    private void choose() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(TEXTS.text("birdsPage.choose", "formats", Purpose.ELEMENTS.names()));
        if (dialog.open() != null) {
            take(Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name)).toList());
        }
    }

    private void take(List<Path> paths) {
        List<SkyFiles> read = new ArrayList<>();
        if (FileWork.run(getShell(), TEXTS.text("birdsPage.reading"), () -> read.add(SkyFiles.read(paths, new NullProgressMonitor())))) {
            draft().elements.addAll(read.get(0).elements());
            draft().set(Lines.DOWNLINKS, draft().start().downlinksToFill());
            tell();
            box().show();
            box().setFocus();
        }
    }

    private void tell() {
        List<String> birds = draft().start().birds();
        told.setText(TEXTS.text("birdsPage.told", "count", birds.size(), "files", draft().elements.size()));
        told.requestLayout();
    }
}
