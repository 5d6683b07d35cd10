package org.straddle.ui.importing;

import java.util.List;
import java.util.Optional;
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
import org.straddle.exchange.sites.SiteImport;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** The last step: every change that the import would make, line by line and field by field. */
final class SitePreviewPage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(SitePreviewPage.class);

    private record Column(String title, int width, Function<PreviewLine, String> text) {
    }

    private static final List<Column> COLUMNS = List.of(new Column(TEXTS.text("sitePreviewPage.line"), 50, PreviewLine::line), new Column(TEXTS.text("sitePreviewPage.change"), 110, PreviewLine::change),
            new Column(TEXTS.text("sitePreviewPage.site"), 160, PreviewLine::site), new Column(TEXTS.text("sitePreviewPage.what"), 80, PreviewLine::field),
            new Column(TEXTS.text("sitePreviewPage.was"), 150, PreviewLine::was), new Column(TEXTS.text("sitePreviewPage.now"), 500, PreviewLine::now));

    private final SiteDraft draft;
    private List<PreviewLine> lines = List.of();
    private Label summary;
    private Button leaveOut;
    private Table table;

    SitePreviewPage(SiteDraft draft) {
        super("preview");
        this.draft = draft;
        setTitle(TEXTS.text("sitePreviewPage.title"));
        setDescription(TEXTS.text("sitePreviewPage.explanation"));
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
        GridDataFactory.fillDefaults().grab(true, true).hint(700, 260).applyTo(table);
        for (Column column : COLUMNS) {
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
        for (int i = 0; i < COLUMNS.size(); i++) {
            row.setText(i, COLUMNS.get(i).text().apply(line));
        }
        if (!line.line().isEmpty()) {
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
            draft.preview().ifPresent(this::show);
        }
        super.setVisible(visible);
    }

    private void show(SiteImport found) {
        lines = found.changes().stream().flatMap(change -> PreviewLine.of(change).stream()).toList();
        table.setItemCount(lines.size());
        table.clearAll();
        summary.setText(found.summary());
        int refused = found.refused().size();
        leaveOut.setVisible(refused > 0);
        leaveOut.setText(TEXTS.text("sitePreviewPage.leave", "count", refused));
        leaveOut.setSelection(draft.leavesOutRefused());
        ((Composite) getControl()).layout();
        judge();
    }

    private void judge() {
        Optional<SiteImport> found = draft.preview();
        boolean refusedStand = found.filter(preview -> !preview.refused().isEmpty()).isPresent() && !draft.leavesOutRefused();
        setErrorMessage(refusedStand ? TEXTS.text("sitePreviewPage.refused") : null);
        boolean nothing = found.filter(SiteImport::isEmpty).isPresent();
        boolean swap = found.filter(SiteImport::swapOffered).isPresent();
        setMessage(nothing ? TEXTS.text("sitePreviewPage.nothing") : swap
                ? TEXTS.text("sitePreviewPage.swapped") : null,
                swap ? IMessageProvider.WARNING : nothing ? IMessageProvider.INFORMATION : IMessageProvider.NONE);
        setPageComplete(draft.isReady());
    }
}
