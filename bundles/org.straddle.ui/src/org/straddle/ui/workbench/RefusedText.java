package org.straddle.ui.workbench;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;

/** Asks what becomes of text in fields that cannot be taken over, before the event is saved or left without it. */
final class RefusedText {

    private static final int MOST_TOLD = 5;

    private RefusedText() {
    }

    /** True if there is none, or the user goes on without it. */
    static boolean ask(Shell shell) {
        List<String> refused = EventSession.current().refused();
        return refused.isEmpty() || MessageDialog.open(MessageDialog.WARNING, shell, "Not taken over",
                words(refused), SWT.NONE, "Go &back", "Go on &without it") == 1;
    }

    private static String words(List<String> refused) {
        return (refused.size() == 1 ? "A field holds text" : refused.size() + " fields hold text")
                + " that cannot be taken over:\n\n"
                + refused.stream().limit(MOST_TOLD).collect(Collectors.joining("\n"))
                + (refused.size() > MOST_TOLD ? "\n…" : "") + "\n\nGo back to correct it, or go on without it.";
    }
}
