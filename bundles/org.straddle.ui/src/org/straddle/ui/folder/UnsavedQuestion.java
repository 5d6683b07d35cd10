package org.straddle.ui.folder;

import java.time.ZoneId;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.straddle.store.UnsavedEdits;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Asks what becomes of edits that were not saved when the program ended. */
final class UnsavedQuestion {

    private static final Catalogue TEXTS = Catalogue.of(UnsavedQuestion.class);

    private UnsavedQuestion() {
    }

    /** True to go on with the edits; false to go on with the event as it was saved last. */
    static boolean ask(Shell shell, UnsavedEdits.Found unsaved) {
        return MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("unsavedQuestion.title"),
                TEXTS.text("unsavedQuestion.question", "at", TimeText.of(ZoneId.systemDefault()).at(unsaved.at()),
                        "changed", unsaved.changedSince()),
                SWT.NONE, TEXTS.text("unsavedQuestion.bring"), TEXTS.text("unsavedQuestion.saved")) == 0;
    }
}
