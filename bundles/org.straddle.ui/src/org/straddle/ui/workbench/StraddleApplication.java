package org.straddle.ui.workbench;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.straddle.model.InertText;
import org.straddle.words.Catalogue;

/** The desktop program. An argument that is no option is the folder of the event to open. */
public final class StraddleApplication implements IApplication {

    private static final Catalogue TEXTS = Catalogue.of(StraddleApplication.class);

    @Override
    public Object start(IApplicationContext context) {
        Optional<Path> event = StartArguments.namedEvent();
        if (event.isPresent() && state().isPresent() && OneWindow.bringToFront(state().get(), event.get())) {
            context.applicationRunning();
            tellTheTerminal(TEXTS.text("straddleApplication.open"));
            return EXIT_OK;
        }
        Display display;
        try {
            display = PlatformUI.createDisplay();
        } catch (SWTError | LinkageError impossible) {
            tellTheTerminal(TEXTS.text("straddleApplication.nowindow",
                    "reason", String.valueOf(impossible.getMessage()).lines().findFirst().orElse("")));
            return 2;
        }
        OpenDocuments documents = new OpenDocuments();
        documents.hear(display);
        try {
            int end = PlatformUI.createAndRunWorkbench(display, new StraddleWorkbench(documents));
            return end == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    /** Without a window the terminal is the only place to say why the program ends. */
    private static void tellTheTerminal(String text) {
        System.err.println(InertText.line(text));
    }

    /** The user's folder for what the program remembers; none when it runs without. */
    static Optional<Path> state() {
        Location location = Platform.getInstanceLocation();
        return location == null || location.getURL() == null ? Optional.empty()
                : Optional.of(new File(location.getURL().getPath()).toPath());
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
