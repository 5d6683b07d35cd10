package org.straddle.ui.findings;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.Finding;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.ui.work.OwnName;
import org.straddle.words.Catalogue;

/** Asks why findings are accepted, and by whom: both are stored with the event. */
final class AcceptDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(AcceptDialog.class);

    /** More sentences would not be read. */
    private static final int TOLD = 5;

    private String name = OwnName.last();

    private final List<Finding> findings;
    private Text reasonText;
    private Text nameText;
    private String reason = "";

    AcceptDialog(Shell parent, List<Finding> findings) {
        super(parent, TEXTS.text("acceptDialog.title", "count", findings.size()), TEXTS.text("acceptDialog.explanation"),
                TEXTS.text("acceptDialog.accept"), 2);
        this.findings = findings;
    }

    String reason() {
        return reason;
    }

    String name() {
        return name;
    }

    @Override
    protected void fields(Composite body) {
        Label sentence = new Label(body, SWT.WRAP);
        sentence.setText(sentences().replace("&", "&&"));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(460, SWT.DEFAULT).applyTo(sentence);
        reasonText = lines(body, TEXTS.text("acceptDialog.reason"), 4, SWT.DEFAULT);
        nameText = line(body, TEXTS.text("acceptDialog.name"), name, SWT.DEFAULT);
        reasonText.addModifyListener(change -> answered());
        nameText.addModifyListener(change -> answered());
        reasonText.setFocus();
    }

    private String sentences() {
        String bullet = findings.size() > 1 ? "•  " : "";
        String told = findings.stream().limit(TOLD).map(finding -> bullet + finding.sentence())
                .collect(Collectors.joining("\n"));
        int more = findings.size() - TOLD;
        return more > 0 ? TEXTS.text("acceptDialog.more", "told", told, "more", more) : told;
    }

    @Override
    protected boolean complete() {
        return !reasonText.getText().isBlank() && !nameText.getText().isBlank();
    }

    @Override
    protected void okPressed() {
        reason = reasonText.getText().strip();
        name = nameText.getText().strip();
        OwnName.remember(name);
        super.okPressed();
    }
}
