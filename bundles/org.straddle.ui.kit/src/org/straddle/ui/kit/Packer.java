package org.straddle.ui.kit;

import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogSettings;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;
import org.straddle.ui.work.OwnName;
import org.straddle.words.Catalogue;

/** Who ticks items off: asked for once, then remembered for this user until changed. */
final class Packer {

    private static final Catalogue TEXTS = Catalogue.of(Packer.class);

    private static final String NAME = "packer";

    private final IDialogSettings memory =
            PlatformUI.getDialogSettingsProvider(FrameworkUtil.getBundle(Packer.class)).getDialogSettings();

    /** The remembered name, else the one that the user enters now; empty if the user cancels. */
    Optional<String> name(Shell shell) {
        String known = memory.get(NAME);
        return known == null || known.isBlank() ? ask(shell) : Optional.of(known);
    }

    /** Asks even if a name is known. */
    Optional<String> ask(Shell shell) {
        InputDialog dialog = new InputDialog(shell, TEXTS.text("packer.whoPacks"),
                TEXTS.text("packer.yourNameCall"), memory.get(NAME) == null ? OwnName.last() : memory.get(NAME),
                text -> text.isBlank() ? TEXTS.text("packer.enterNameCall") : null);
        if (dialog.open() != Window.OK) {
            return Optional.empty();
        }
        String name = dialog.getValue().strip();
        memory.put(NAME, name);
        OwnName.remember(name);
        return Optional.of(name);
    }
}
