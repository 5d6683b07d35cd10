package org.straddle.ui.workbench;

import java.time.Duration;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.straddle.plan.PlanSettings;
import org.straddle.ui.parts.QuestionDialog;

/** Asks how long to search for a plan, and from which seed. */
final class ProposeDialog extends QuestionDialog {

    /** How long people wait for a plan, unless they say otherwise. */
    private static PlanSettings last = new PlanSettings(Duration.ofSeconds(20), 1);

    private Spinner seconds;
    private Spinner seed;

    ProposeDialog(Shell parent) {
        super(parent, "Search for a plan", "For all teams at once. Pinned stops and turns stay as they are.", "Search",
                3);
    }

    PlanSettings settings() {
        return last;
    }

    @Override
    protected void fields(Composite body) {
        seconds = field(body, "Search &for:", "seconds", (int) last.time().toSeconds(), 3600);
        seed = field(body, "&Seed:", "another seed may give another plan", (int) last.seed(), Integer.MAX_VALUE);
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
    protected boolean complete() {
        return true;
    }

    @Override
    protected void okPressed() {
        last = new PlanSettings(Duration.ofSeconds(seconds.getSelection()), seed.getSelection());
        super.okPressed();
    }
}
