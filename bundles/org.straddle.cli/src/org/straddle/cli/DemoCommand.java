package org.straddle.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.store.EventFolder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code demo DIR}: writes the demo event. */
@Command(name = "demo", mixinStandardHelpOptions = true, description = "Write the demo event, an invented midsummer rove, into a new folder.")
final class DemoCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR", description = "Folder to make; it must not exist or be empty.")
    private Path folder;

    @Override
    public Integer call() throws Exception {
        DemoEvent.write(folder);
        // Read back, so that what is printed is what was written.
        try (EventFolder written = EventFolder.openReadOnly(folder)) {
            Event event = written.event();
            spec.commandLine().getOut().printf("%s: %d teams, %d operators, %d sites, %d birds, in %s%n", event.getName(),
                    event.getTeams().size(), event.getOperators().size(), event.getSites().size(),
                    event.getBirds().size(), folder);
        }
        return StraddleCommand.DONE;
    }
}
