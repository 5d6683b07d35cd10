package org.straddle.cli;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The headless application: hands the arguments to the command line and its exit code to the platform. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        // The splash screen, if any, waits for this word.
        context.applicationRunning();
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return StraddleCommand.run(arguments);
    }

    @Override
    public void stop() {
        // Nothing to stop: every command ends by itself, and a signal ends the process.
    }
}
