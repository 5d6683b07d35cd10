package org.straddle.ui.importing;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.sites.SiteChange;
import org.straddle.exchange.sites.SiteField;
import org.straddle.exchange.sites.SiteImport;
import org.straddle.exchange.sites.SiteKey;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.words.Catalogue;

/** The second step: what each column says, how sites of the event are known, and which way round coordinates are. */
final class SiteMappingPage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(SiteMappingPage.class);

    private static final int SAMPLES = 3;
    private static final String IGNORE = TEXTS.text("siteMappingPage.ignore");
    private static final String[] KEYS = {TEXTS.text("siteMappingPage.key.id"), TEXTS.text("siteMappingPage.key.name"), TEXTS.text("siteMappingPage.key.position")};
    private static final SiteKey.Kind[] KINDS = {SiteKey.Kind.ID, SiteKey.Kind.NAME, SiteKey.Kind.POSITION};

    private final SiteDraft draft;
    private final Map<String, Combo> choices = new HashMap<>();
    private ScrolledComposite scroll;
    private Combo key;
    private Spinner within;
    private Button swapped;
    private Label outcome;
    private SourceTable shown;

    SiteMappingPage(SiteDraft draft) {
        super("mapping");
        this.draft = draft;
        setTitle(TEXTS.text("siteMappingPage.title"));
        setDescription(TEXTS.text("siteMappingPage.explanation"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(4).margins(12, 8).spacing(10, 8).create());
        scroll = new ScrolledComposite(body, SWT.V_SCROLL | SWT.BORDER);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, true).span(4, 1).hint(SWT.DEFAULT, 200).applyTo(scroll);
        new Label(body, SWT.NONE).setText(TEXTS.text("siteMappingPage.key"));
        key = new Combo(body, SWT.READ_ONLY);
        key.setItems(KEYS);
        within = new Spinner(body, SWT.BORDER);
        within.setValues((int) draft.withinM(), 1, (int) SiteKey.FARTHEST_M, 0, 1, 100);
        new Label(body, SWT.NONE).setText(TEXTS.text("siteMappingPage.metres"));
        swapped = new Button(body, SWT.CHECK);
        swapped.setText(TEXTS.text("siteMappingPage.swap"));
        GridDataFactory.fillDefaults().span(4, 1).applyTo(swapped);
        outcome = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(4, 1).hint(500, 54).applyTo(outcome);
        key.addListener(SWT.Selection, change -> know());
        within.addListener(SWT.Selection, change -> know());
        swapped.addListener(SWT.Selection, change -> {
            draft.order(swapped.getSelection() ? CoordinateOrder.SWAPPED : CoordinateOrder.OF_THE_FORMAT);
            judge();
        });
        setControl(body);
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            draft.table().ifPresent(this::show);
        }
        super.setVisible(visible);
    }

    private void show(SourceTable table) {
        if (table != shown) {
            shown = table;
            columns(table);
        }
        fill();
        judge();
    }

    private void columns(SourceTable table) {
        choices.clear();
        Composite rows = new Composite(scroll, SWT.NONE);
        rows.setLayout(GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 8).spacing(16, 6).create());
        Stream.of(TEXTS.text("siteMappingPage.column"), TEXTS.text("siteMappingPage.example"), TEXTS.text("siteMappingPage.says")).forEach(heading -> {
            Label label = new Label(rows, SWT.NONE);
            label.setText(heading);
            label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        });
        List<String> items = new ArrayList<>(List.of(IGNORE));
        Stream.of(SiteField.values()).map(SiteField::label).forEach(items::add);
        for (String column : table.columns()) {
            Label name = new Label(rows, SWT.NONE);
            name.setText(escaped(column));
            Label samples = new Label(rows, SWT.NONE);
            samples.setText(escaped(String.join("  ·  ", table.samples(column, SAMPLES))));
            GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(240, SWT.DEFAULT).applyTo(samples);
            Combo choice = new Combo(rows, SWT.READ_ONLY);
            choice.setItems(items.toArray(String[]::new));
            choice.setToolTipText(TEXTS.text("siteMappingPage.column.tooltip", "column", column));
            choice.setVisibleItemCount(items.size());
            choice.addListener(SWT.Selection, change -> {
                int index = choice.getSelectionIndex();
                draft.map(draft.mapping().with(column, index <= 0 ? null : SiteField.values()[index - 1]));
                fill();
                judge();
            });
            choices.put(column, choice);
        }
        if (scroll.getContent() != null) {
            scroll.getContent().dispose();
        }
        scroll.setContent(rows);
        scroll.setMinSize(rows.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }

    private static String escaped(String text) {
        return (text.length() > 90 ? text.substring(0, 90) + "…" : text).replace("&", "&&");
    }

    private void fill() {
        choices.forEach((column, choice) -> choice.select(draft.mapping().field(column).map(field -> field.ordinal() + 1).orElse(0)));
        for (int i = 0; i < KINDS.length; i++) {
            if (KINDS[i] == draft.key().kind()) {
                key.select(i);
            }
        }
        within.setEnabled(draft.key().kind() == SiteKey.Kind.POSITION);
        swapped.setSelection(draft.order() == CoordinateOrder.SWAPPED);
    }

    private void know() {
        SiteKey.Kind kind = KINDS[key.getSelectionIndex()];
        draft.know(kind == SiteKey.Kind.ID ? SiteKey.ID : kind == SiteKey.Kind.NAME ? SiteKey.NAME : SiteKey.within(within.getSelection()));
        within.setEnabled(kind == SiteKey.Kind.POSITION);
        judge();
    }

    private void judge() {
        if (draft.isLongWork()) {
            try {
                getContainer().run(true, false, monitor -> draft.preview());
            } catch (InvocationTargetException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
        Optional<String> problem = draft.problem();
        setErrorMessage(problem.orElse(null));
        setPageComplete(problem.isEmpty());
        Optional<SiteImport> found = draft.preview();
        outcome.setText(found.map(SiteMappingPage::told).orElse(""));
        setMessage(found.filter(SiteImport::swapOffered).isPresent()
                ? TEXTS.text("siteMappingPage.swapped") : null,
                found.filter(SiteImport::swapOffered).isPresent() ? IMessageProvider.WARNING : IMessageProvider.NONE);
    }

    /** How the first line is understood, and what all come to. */
    private static String told(SiteImport found) {
        SiteChange first = found.changes().get(0);
        if (first instanceof SiteChange.Refused refused) {
            return TEXTS.text("siteMappingPage.refused", "line", first.line(), "site", first.name(),
                    "reason", refused.reason(), "summary", found.summary());
        }
        String changes = PreviewLine.of(first).stream().map(line -> TEXTS.text("siteMappingPage.change",
                "field", line.field().isEmpty() ? "none" : line.field(), "change", line.change(), "now", line.now()))
                .collect(Collectors.joining("; "));
        return TEXTS.text("siteMappingPage.understood", "line", first.line(), "site", first.name(),
                "changes", changes, "summary", found.summary());
    }
}
