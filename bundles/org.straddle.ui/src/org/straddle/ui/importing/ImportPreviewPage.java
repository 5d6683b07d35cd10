package org.straddle.ui.importing;

import java.util.List;
import java.util.function.Function;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** The last step: every change that the import would make, line by line and field by field. */
final class ImportPreviewPage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(ImportPreviewPage.class);

    private record Column(String title, int width, Function<PreviewLine, String> text) {
    }

    private final List<Column> columns;
    private final PreviewedImport draft;
    private List<PreviewLine> lines = List.of();
    private Label summary;
    private Button leaveOut;
    private Table table;

    /** @param things heading of the column with the names of what comes in */
    ImportPreviewPage(PreviewedImport draft, String things) {
        super("preview");
        this.draft = draft;
        columns = List.of(new Column(TEXTS.text("importPreviewPage.line"), 50, PreviewLine::line),
                new Column(TEXTS.text("importPreviewPage.change"), 110, PreviewLine::change),
                new Column(things, 160, PreviewLine::thing), new Column(TEXTS.text("importPreviewPage.what"), 80, PreviewLine::field),
                new Column(TEXTS.text("importPreviewPage.was"), 150, PreviewLine::was), new Column(TEXTS.text("importPreviewPage.now"), 500, PreviewLine::now));
        setTitle(TEXTS.text("importPreviewPage.title"));
        setDescription(TEXTS.text("importPreviewPage.explanation"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().margins(12, 8).spacing(10, 8).create());
        summary = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(summary);
        // Virtual: a file may have thousands of lines.
        table = new Table(body, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        GridDataFactory.fillDefaults().grab(true, true).hint(700, 260).applyTo(table);
        for (Column column : columns) {
            TableColumn made = new TableColumn(table, SWT.NONE);
            made.setText(column.title());
            made.setWidth(column.width());
        }
        table.addListener(SWT.SetData, asked -> fill((TableItem) asked.item, lines.get(table.indexOf((TableItem) asked.item))));
        leaveOut = new Button(body, SWT.CHECK);
        leaveOut.addListener(SWT.Selection, change -> {
            draft.leaveOutRefused(leaveOut.getSelection());
            judge();
        });
        setControl(body);
    }

    private void fill(TableItem row, PreviewLine line) {
        for (int i = 0; i < columns.size(); i++) {
            row.setText(i, columns.get(i).text().apply(line));
        }
        if (!line.change().isEmpty()) {
            row.setImage(1, Icons.image(switch (line.grade()) {
                case NEW -> "add";
                case CHANGED -> "fix";
                case UNCHANGED -> "accepted";
                case REFUSED -> "blocker";
            }));
        }
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            show();
        }
        super.setVisible(visible);
    }

    private void show() {
        lines = draft.lines();
        table.setItemCount(lines.size());
        table.clearAll();
        summary.setText(draft.summary());
        leaveOut.setVisible(draft.refusedLines() > 0);
        leaveOut.setText(TEXTS.text("importPreviewPage.leave", "count", draft.refusedLines()));
        leaveOut.setSelection(draft.leavesOutRefused());
        ((Composite) getControl()).layout();
        judge();
    }

    private void judge() {
        boolean refusedStand = draft.refusedLines() > 0 && !draft.leavesOutRefused();
        setErrorMessage(refusedStand ? TEXTS.text("importPreviewPage.refused") : null);
        boolean doubt = !draft.doubt().isEmpty();
        setMessage(draft.changesNothing() ? TEXTS.text("importPreviewPage.nothing") : doubt ? draft.doubt() : null,
                doubt ? IMessageProvider.WARNING : draft.changesNothing() ? IMessageProvider.INFORMATION : IMessageProvider.NONE);
        setPageComplete(draft.isReady());
    }
}
