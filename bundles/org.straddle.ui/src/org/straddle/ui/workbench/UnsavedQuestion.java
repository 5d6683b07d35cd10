package org.straddle.ui.workbench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.straddle.store.UnsavedEdits;

/** Asks what becomes of edits that were not saved when the program ended. */
final class UnsavedQuestion {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

    private UnsavedQuestion() {
    }

    /** True to go on with the edits; false to go on with the event as it was saved last. */
    static boolean ask(Shell shell, UnsavedEdits.Found unsaved) {
        String at = TIME.format(unsaved.at().atZone(ZoneId.systemDefault()));
        String changed = unsaved.changedSince() ? "\n\nThe event was changed on the disk since then. Bring the edits back only to"
                + " look, and save to another folder: a save here takes those changes back." : "";
        return MessageDialog.open(MessageDialog.QUESTION, shell, "Unsaved edits", "Straddle ended without saving. Edits of "
                + at + " were kept." + changed + "\n\nBring them back? They are saved only when you save. Otherwise they are kept"
                + " until you edit and save the event.", SWT.NONE, "&Bring them back", "Open as &saved") == 0;
    }
}
