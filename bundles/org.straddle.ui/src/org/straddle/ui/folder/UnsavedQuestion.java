package org.straddle.ui.folder;

import java.time.ZoneId;
import java.util.List;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.store.UnsavedEdits;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Asks what becomes of edits that were not saved when the program ended. */
final class UnsavedQuestion extends MessageDialog {

    private static final Catalogue TEXTS = Catalogue.of(UnsavedQuestion.class);

    private static final int TYPED_WIDTH = 480;
    private static final int TYPED_LINES = 5;

    private final List<String> typed;

    private UnsavedQuestion(Shell shell, UnsavedEdits.Found unsaved) {
        super(shell, TEXTS.text("unsavedQuestion.title"), null, TEXTS.text("unsavedQuestion.question",
                "at", TimeText.of(ZoneId.systemDefault()).at(unsaved.at()), "changed", unsaved.changedSince()), QUESTION, 0,
                TEXTS.text("unsavedQuestion.bring"), TEXTS.text("unsavedQuestion.saved"));
        typed = unsaved.typed();
    }

    /** True to go on with the edits; false to go on with the event as it was saved last. */
    static boolean ask(Shell shell, UnsavedEdits.Found unsaved) {
        return new UnsavedQuestion(shell, unsaved).open() == 0;
    }

    /** What was typed and is not among the edits, to be read and copied from. */
    @Override
    protected Control createCustomArea(Composite parent) {
        if (typed.isEmpty()) {
            return null;
        }
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayout(GridLayoutFactory.fillDefaults().create());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        new Label(area, SWT.NONE).setText(TEXTS.text("unsavedQuestion.typed"));
        Text text = new Text(area, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL);
        text.setText(String.join("\n", typed));
        GridDataFactory.fillDefaults().grab(true, true).hint(TYPED_WIDTH, TYPED_LINES * text.getLineHeight()).applyTo(text);
        return area;
    }
}
