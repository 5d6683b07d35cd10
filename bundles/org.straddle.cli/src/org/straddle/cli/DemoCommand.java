package org.straddle.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;

import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code demo DIR}: writes the demo event. */
@Command(name = "demo", mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

    private static final Catalogue TEXTS = Catalogue.of(DemoCommand.class);

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "DIR")
    private Path folder;

    @Override
    public Integer call() throws Exception {
        DemoEvent.write(folder);
        // Read back, so that what is printed is what was written.
        try (EventFolder written = EventFolder.openReadOnly(folder)) {
            Event event = written.event();
            spec.commandLine().getOut().println(TEXTS.text("demoCommand.teamsOperatorsSites", "event", InertText.line(event.getName()),
                    "teams", event.getTeams().size(), "operators", event.getOperators().size(),
                    "sites", event.getSites().size(), "birds", event.getBirds().size(), "folder", folder));
        }
        return StraddleCommand.DONE;
    }
}
