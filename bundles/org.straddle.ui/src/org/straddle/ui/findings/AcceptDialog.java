package org.straddle.ui.findings;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.Finding;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.ui.parts.TabLeaves;

/** Asks why a finding is accepted, and by whom: both are stored with the event. */
final class AcceptDialog extends QuestionDialog {

    private static String lastName = "";

    private final Finding finding;
    private Text reasonText;
    private Text nameText;
    private String reason = "";

    AcceptDialog(Shell parent, Finding finding) {
        super(parent, "Accept this finding", "It stays accepted until the facts under it change.", "Accept", 2);
        this.finding = finding;
    }

    String reason() {
        return reason;
    }

    String name() {
        return lastName;
    }

    @Override
    protected void fields(Composite body) {
        Label sentence = new Label(body, SWT.WRAP);
        sentence.setText(finding.sentence());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(460, SWT.DEFAULT).applyTo(sentence);
        Label why = new Label(body, SWT.NONE);
        why.setText("&Reason:");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).applyTo(why);
        reasonText = new Text(body, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        TabLeaves.on(reasonText);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 4 * reasonText.getLineHeight())
                .applyTo(reasonText);
        new Label(body, SWT.NONE).setText("Your &name:");
        nameText = new Text(body, SWT.BORDER);
        nameText.setText(lastName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(nameText);
        reasonText.addModifyListener(change -> answered());
        nameText.addModifyListener(change -> answered());
        reasonText.setFocus();
    }

    @Override
    protected boolean complete() {
        return !reasonText.getText().isBlank() && !nameText.getText().isBlank();
    }

    @Override
    protected void okPressed() {
        reason = reasonText.getText().strip();
        lastName = nameText.getText().strip();
        super.okPressed();
    }
}
