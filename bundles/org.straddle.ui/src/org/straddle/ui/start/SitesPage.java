package org.straddle.ui.start;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.sites.SiteChange;
import org.straddle.exchange.sites.SiteImport;
import org.straddle.exchange.sites.SiteMapping;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.exchange.start.EventStart;
import org.straddle.model.Site;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.start.NewEventDraft.Lines;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Sites, written or out of a file: its rows become lines that can still be changed. */
final class SitesPage extends LinesPage {

    private static final Catalogue TEXTS = Catalogue.of(SitesPage.class);

    private static final double LONGEST_SPAN_M = 1000;

    SitesPage(NewEventDraft draft) {
        super(draft, Lines.SITES, EventStart::readSites, TEXTS.text("sitesPage.title"), TEXTS.text("sitesPage.description"),
                TEXTS.text("sitesPage.example"));
    }

    @Override
    void above(Composite body) {
        Composite row = new Composite(body, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(4).create());
        Button button = new Button(row, SWT.PUSH);
        button.setText(TEXTS.text("sitesPage.file"));
        button.addListener(SWT.Selection, click -> {
            String chosen = new FileDialog(getShell(), SWT.OPEN).open();
            if (chosen != null) {
                take(Path.of(chosen));
            }
        });
        span(row);
    }

    private void span(Composite row) {
        Label label = new Label(row, SWT.NONE);
        label.setText(TEXTS.text("sitesPage.span"));
        GridDataFactory.fillDefaults().indent(20, 0).align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        Text text = new Text(row, SWT.BORDER);
        text.setText(Numbers.plain(draft().stationSpanM));
        GridDataFactory.fillDefaults().hint(50, SWT.DEFAULT).applyTo(text);
        new Label(row, SWT.NONE).setText(TEXTS.text("sitesPage.span.unit"));
        text.addModifyListener(change -> {
            try {
                draft().stationSpanM = Numbers.between(0, LONGEST_SPAN_M).parse(text.getText());
                box().show();
            } catch (IllegalArgumentException wrong) {
                setErrorMessage(TEXTS.text("sitesPage.span.wrong", "problem", wrong.getMessage()));
                setPageComplete(false);
            }
        });
    }

    private void take(Path file) {
        String[] lines = new String[1];
        if (FileWork.run(getShell(), TEXTS.text("sitesPage.reading", "file", file.getFileName()), () -> lines[0] = lines(file))) {
            String before = draft().lines(Lines.SITES);
            draft().set(Lines.SITES, before + (before.isBlank() || before.endsWith("\n") ? "" : "\n") + lines[0]);
            box().show();
        }
    }

    private String lines(Path file) throws ReadException {
        SourceTable table = SourceTable.read(file.getFileName().toString(), SourceFile.read(file).bytes());
        SiteMapping mapping = SiteMapping.guess(table);
        List<Site> sites = mapping.problem(mapping.usualKey()).isPresent() ? List.of()
                : SiteImport.of(draft().start().event(), table, mapping, CoordinateOrder.OF_THE_FORMAT, mapping.usualKey())
                        .changes().stream().filter(SiteChange.New.class::isInstance).map(change -> ((SiteChange.New) change).site())
                        .toList();
        if (sites.isEmpty()) {
            throw new ReadException(file.getFileName().toString(), 1, TEXTS.text("sitesPage.none"), TEXTS.text("sitesPage.none.todo"));
        }
        return sites.stream().map(site -> TEXTS.text("sitesPage.line", "name", site.getName().replaceAll("[,;\t\n]", " "),
                "position", site.getLatitudeDeg() + " " + site.getLongitudeDeg())).collect(Collectors.joining("\n"));
    }
}
