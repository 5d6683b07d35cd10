package org.straddle.ui.folder;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Asks what becomes of unsaved changes before the event is left. */
public final class LeaveEvent {

    private static final Catalogue TEXTS = Catalogue.of(LeaveEvent.class);

    private static final int SAVE = 0;
    private static final int DISCARD = 1;

    private LeaveEvent() {
    }

    /** True if the event may be left: nothing was unsaved, it was saved, or the user lets the changes go. */
    public static boolean ask() {
        EventSession session = EventSession.current();
        session.commitPendingEdits();
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow() == null ? null
                : PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        if (!session.dirty()) {
            return RefusedText.ask(shell);
        }
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("leaveEvent.title"),
                TEXTS.text("leaveEvent.question", "event", session.event().getName()), SWT.NONE, TEXTS.text("leaveEvent.save"),
                TEXTS.text("leaveEvent.discard"), TEXTS.text("leaveEvent.cancel"));
        return answer == DISCARD || answer == SAVE && SaveEvent.save(shell);
    }
}
