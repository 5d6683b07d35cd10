package org.straddle.ui.map;

import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.PositionText;
import org.straddle.words.Catalogue;

/** Asks for a position in any common form, or a locator. */
final class GoToDialog {

    private static final Catalogue TEXTS = Catalogue.of(GoToDialog.class);

    private GoToDialog() {
    }

    /** Empty when the user gave up. */
    static Optional<GeoPosition> ask(Shell shell, String title, String first) {
        InputDialog dialog = new InputDialog(shell, title,
                TEXTS.text("goToDialog.latitudeLongitudeLocator"), first,
                GoToDialog::objection);
        return dialog.open() == Window.OK ? Optional.of(PositionText.read(dialog.getValue()).position()) : Optional.empty();
    }

    private static String objection(String text) {
        try {
            PositionText.read(text);
            return null;
        } catch (IllegalArgumentException unreadable) {
            // An empty message forbids OK and says nothing yet; how to write a place stands above the field.
            return text.isBlank() ? "" : unreadable.getMessage().replaceFirst("(?s)\\. Write, for example.*", ".");
        }
    }
}
