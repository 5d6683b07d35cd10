package org.straddle.ui.editors;

import java.util.List;

import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** A slip of paper with all that a form has to tell, in full sentences; any click elsewhere takes it away. */
final class MessageLines extends PopupDialog {

    private static final int WIDTH = 520;

    /** One message with the picture of its weight. */
    record Line(Image image, String sentence) {
    }

    private final List<Line> lines;

    MessageLines(Shell parent, List<Line> lines) {
        super(parent, SWT.RESIZE, true, false, false, false, false, null, null);
        this.lines = lines;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite body = (Composite) super.createDialogArea(parent);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 10;
        layout.marginHeight = 10;
        layout.verticalSpacing = 8;
        body.setLayout(layout);
        for (Line line : lines) {
            Label image = new Label(body, SWT.NONE);
            image.setImage(line.image);
            GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.TOP).applyTo(image);
            Label sentence = new Label(body, SWT.WRAP);
            sentence.setText(line.sentence.replace("&", "&&"));
            GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(sentence);
        }
        return body;
    }

    @Override
    protected Point getInitialLocation(Point size) {
        return getShell().getDisplay().getCursorLocation();
    }
}
