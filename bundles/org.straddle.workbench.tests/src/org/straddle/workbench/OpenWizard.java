package org.straddle.workbench;

import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/** A wizard on the screen, found by its title. */
record OpenWizard(DemoWindow window, String title) {

    /** Null while it is closed; to be called on the UI thread. */
    Shell shell() {
        return Stream.of(PlatformUI.getWorkbench().getDisplay().getShells())
                .filter(shell -> shell.isVisible() && shell.getText().equals(title)).findFirst().orElse(null);
    }

    void awaitOpen() {
        window.until("the wizard is open", () -> shell() != null);
    }

    void awaitClosed() {
        window.until("the wizard is closed", () -> shell() == null);
    }

    /** To be called on the UI thread. */
    Button button(String words) {
        return RunningWorkbench.below(shell(), Button.class).stream()
                .filter(button -> button.getText().replace("&", "").startsWith(words) && button.isVisible()).findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
    }

    boolean enabled(String words) {
        return window.ask(() -> button(words).isEnabled());
    }

    /** Presses a button, or ticks a box. */
    void press(String words) {
        window.until(words + " can be pressed", () -> button(words).isEnabled());
        window.ui(() -> {
            Button button = button(words);
            if ((button.getStyle() & SWT.CHECK) != 0) {
                button.setSelection(true);
            }
            button.notifyListeners(SWT.Selection, new Event());
        });
    }

    /** Writes into the first field that takes text. */
    void type(String words) {
        window.ui(() -> RunningWorkbench.below(shell(), Text.class).stream()
                .filter(text -> text.isVisible() && (text.getStyle() & SWT.READ_ONLY) == 0).findFirst().orElseThrow().setText(words));
    }

    /** The table that is seen; null while there is none. To be called on the UI thread. */
    Table table() {
        return RunningWorkbench.below(shell(), Table.class).stream().filter(Control::isVisible).findFirst().orElse(null);
    }
}
