package org.straddle.ui.workbench;

import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** What one command does, when it can be done, and, for undo and redo, what it is called just now. */
final class SessionCommand extends AbstractHandler implements IElementUpdater {

    private final Shell shell;
    private final BooleanSupplier possible;
    private final Consumer<Shell> action;
    private final Supplier<String> label;

    SessionCommand(Shell shell, BooleanSupplier possible, Consumer<Shell> action, Supplier<String> label) {
        this.shell = shell;
        this.possible = possible;
        this.action = action;
        this.label = label;
        refresh();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (possible.getAsBoolean()) {
            action.accept(shell);
        }
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        if (label != null) {
            element.setText(label.get());
        }
    }

    void refresh() {
        setBaseEnabled(possible.getAsBoolean());
    }
}
