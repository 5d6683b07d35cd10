package org.straddle.ui.folder;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** Asks what becomes of text in fields that cannot be taken over, before the event is saved or left without it. */
final class RefusedText {

    private static final Catalogue TEXTS = Catalogue.of(RefusedText.class);

    private static final int MOST_TOLD = 5;

    private RefusedText() {
    }

    /** True if there is none, or the user goes on without it. */
    static boolean ask(Shell shell) {
        List<String> refused = EventSession.current().refused();
        return refused.isEmpty() || MessageDialog.open(MessageDialog.WARNING, shell, TEXTS.text("refusedText.title"),
                words(refused), SWT.NONE, TEXTS.text("refusedText.back"), TEXTS.text("refusedText.without")) == 1;
    }

    private static String words(List<String> refused) {
        return TEXTS.text("refusedText.question", "count", refused.size(),
                "fields", refused.stream().limit(MOST_TOLD).collect(Collectors.joining("\n")), "more", refused.size() > MOST_TOLD);
    }
}
