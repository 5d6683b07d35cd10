package org.straddle.ui.start;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.words.Catalogue;

/** The last step: what the event still lacks, and where that is entered later. */
final class MissingPage extends WizardPage {

    private static final Catalogue TEXTS = Catalogue.of(MissingPage.class);

    private static final int WIDTH = 400;

    private final NewEventDraft draft;
    private Label told;
    private Text list;

    MissingPage(NewEventDraft draft) {
        super("missing", TEXTS.text("missingPage.title"), null);
        this.draft = draft;
        setDescription(TEXTS.text("missingPage.description"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().margins(12, 12).spacing(10, 8).create());
        told = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(told);
        list = new Text(body, SWT.BORDER | SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        TabLeaves.on(list);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, SWT.DEFAULT).applyTo(list);
        setControl(body);
    }

    @Override
    public void setVisible(boolean visible) {
        if (visible) {
            List<String> missing = draft.start().missing();
            told.setText(TEXTS.text("missingPage.told", "count", missing.size(), "folder", draft.folder));
            told.requestLayout();
            list.setText(String.join("\n", missing.stream().map(sentence -> TEXTS.text("missingPage.line", "sentence", sentence)).toList()));
        }
        super.setVisible(visible);
        if (visible) {
            list.setFocus();
        }
    }
}
