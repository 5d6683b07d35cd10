package org.straddle.ui.parts;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** A dialog with a heading, a few fields in columns, and a button that names what it does. */
public abstract class QuestionDialog extends TitleAreaDialog {

    private final String heading;
    private final String explanation;
    private final String deed;
    private final int columns;

    protected QuestionDialog(Shell parent, String heading, String explanation, String deed, int columns) {
        super(parent);
        this.heading = heading;
        this.explanation = explanation;
        this.deed = deed;
        this.columns = columns;
    }

    /** Makes the fields in the columns of the body. */
    protected abstract void fields(Composite body);

    /** May the question be answered as it stands? Called at first and after each {@link #answered}. */
    protected abstract boolean complete();

    /**
     * A label, and a line beside it to write in.
     *
     * @param widthPx that it would like to have; SWT.DEFAULT for what is left
     */
    protected static Text line(Composite body, String label, String value, int widthPx) {
        new Label(body, SWT.NONE).setText(label);
        Text line = new Text(body, SWT.BORDER);
        line.setText(value);
        GridDataFactory.fillDefaults().grab(true, false).hint(widthPx, SWT.DEFAULT).applyTo(line);
        return line;
    }

    /** A label, and some lines beside it to write sentences in; tabulators leave them. */
    protected static Text lines(Composite body, String label, int count, int widthPx) {
        Label name = new Label(body, SWT.NONE);
        name.setText(label);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).applyTo(name);
        Text lines = new Text(body, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        TabLeaves.on(lines);
        GridDataFactory.fillDefaults().grab(true, true).hint(widthPx, count * lines.getLineHeight()).applyTo(lines);
        return lines;
    }

    /** A field was changed. */
    protected final void answered() {
        Button button = getButton(IDialogConstants.OK_ID);
        if (button != null) {
            button.setEnabled(complete());
        }
    }

    @Override
    protected final void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(heading);
    }

    @Override
    protected final boolean isResizable() {
        return true;
    }

    @Override
    protected final Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite body = new Composite(area, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(columns).margins(12, 12).spacing(10, 8).create());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        setTitle(heading);
        setMessage(explanation);
        fields(body);
        return area;
    }

    @Override
    protected final void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        Button ok = getButton(IDialogConstants.OK_ID);
        ok.setText(deed);
        setButtonLayoutData(ok);
        ok.setEnabled(complete());
        setErrorMessage(null);
    }
}
