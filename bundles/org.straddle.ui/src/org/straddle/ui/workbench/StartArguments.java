package org.straddle.ui.workbench;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.PlatformUI;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Opens the event folder that was named when the program was started. */
final class StartArguments {

    private static final Catalogue TEXTS = Catalogue.of(StartArguments.class);

    private StartArguments() {
    }

    /** The event folder that was named, whether it exists or not. */
    static Optional<Path> namedEvent() {
        try {
            return Optional.ofNullable(name()).map(name -> Path.of(name).toAbsolutePath());
        } catch (InvalidPathException failure) {
            return Optional.empty();
        }
    }

    static void openNamedEvent() {
        String name = name();
        if (name != null) {
            open(name);
        }
    }

    private static String name() {
        String[] arguments = Platform.getApplicationArgs();
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i].startsWith("-")) {
                // The launcher leaves its own options in the list; those that take a value are followed by it.
                i += i + 1 < arguments.length && takesValue(arguments[i]) ? 1 : 0;
            } else if (!arguments[i].isBlank()) {
                return arguments[i];
            }
        }
        return null;
    }

    private static boolean takesValue(String option) {
        return option.equals("-product") || option.equals("-application");
    }

    private static void open(String name) {
        var shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        try {
            OpenEvent.open(shell, Path.of(name).toAbsolutePath());
        } catch (InvalidPathException failure) {
            Problem.show(shell, TEXTS.text("startArguments.noname", "name", name), failure);
        }
    }
}
