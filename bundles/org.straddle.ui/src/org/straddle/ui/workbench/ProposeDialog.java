package org.straddle.ui.workbench;

import java.time.Duration;

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
import org.eclipse.swt.widgets.Spinner;
import org.straddle.plan.PlanSettings;

/** Asks how long to search for a plan, and from which seed. */
final class ProposeDialog extends TitleAreaDialog {

    private static PlanSettings last = ProposePlan.usual();

    private Spinner seconds;
    private Spinner seed;

    ProposeDialog(Shell parent) {
        super(parent);
    }

    PlanSettings settings() {
        return last;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Plan");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 12;
        layout.marginHeight = 12;
        layout.horizontalSpacing = 10;
        body.setLayout(layout);
        seconds = field(body, "Search &for:", "seconds", (int) last.time().toSeconds(), 3600);
        seed = field(body, "&Seed:", "another seed may give another plan", (int) last.seed(), Integer.MAX_VALUE);
        setTitle("Search for a plan");
        setMessage("For all teams at once. Pinned stops and turns stay as they are.");
        return area;
    }

    private static Spinner field(Composite body, String label, String unit, int value, int most) {
        new Label(body, SWT.NONE).setText(label);
        Spinner spinner = new Spinner(body, SWT.BORDER);
        spinner.setValues(value, 1, most, 0, 1, 10);
        GridDataFactory.fillDefaults().hint(110, SWT.DEFAULT).applyTo(spinner);
        new Label(body, SWT.NONE).setText(unit);
        return spinner;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        getButton(IDialogConstants.OK_ID).setText("Search");
    }

    @Override
    protected void okPressed() {
        last = new PlanSettings(Duration.ofSeconds(seconds.getSelection()), seed.getSelection());
        super.okPressed();
    }
}
