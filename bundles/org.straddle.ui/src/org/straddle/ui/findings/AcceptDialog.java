package org.straddle.ui.findings;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.Finding;

/** Asks why a finding is accepted, and by whom: both are stored with the event. */
final class AcceptDialog extends TitleAreaDialog {

    private static String lastName = "";

    private final Finding finding;
    private Text reasonText;
    private Text nameText;
    private String reason = "";

    AcceptDialog(Shell parent, Finding finding) {
        super(parent);
        this.finding = finding;
    }

    String reason() {
        return reason;
    }

    String name() {
        return lastName;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Accept finding");
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 12;
        layout.verticalSpacing = 8;
        body.setLayout(layout);
        Label sentence = new Label(body, SWT.WRAP);
        sentence.setText(finding.sentence());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(460, SWT.DEFAULT).applyTo(sentence);
        Label why = new Label(body, SWT.NONE);
        why.setText("&Reason:");
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).applyTo(why);
        reasonText = new Text(body, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 4 * reasonText.getLineHeight())
                .applyTo(reasonText);
        new Label(body, SWT.NONE).setText("Your &name:");
        nameText = new Text(body, SWT.BORDER);
        nameText.setText(lastName);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(nameText);
        setTitle("Accept this finding");
        setMessage("It stays accepted until the facts under it change.");
        reasonText.addModifyListener(change -> validate());
        nameText.addModifyListener(change -> validate());
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        getButton(IDialogConstants.OK_ID).setText("Accept");
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        reasonText.setFocus();
    }

    private void validate() {
        getButton(IDialogConstants.OK_ID).setEnabled(!reasonText.getText().isBlank() && !nameText.getText().isBlank());
    }

    @Override
    protected void okPressed() {
        reason = reasonText.getText().strip();
        lastName = nameText.getText().strip();
        super.okPressed();
    }
}
