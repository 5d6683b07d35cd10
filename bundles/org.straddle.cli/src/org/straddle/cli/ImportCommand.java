package org.straddle.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.exchange.ElementFile;
import org.straddle.exchange.ElementImport;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import EVENT FILE…}: takes element sets into the event. */
@Command(name = "import", description = { "Take element sets from TLE files (two or three lines) or OMM files (KVN, XML, JSON, CSV).",
    "When anything in a file is wrong, nothing is changed." })
final class ImportCommand extends EventCommand {

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Files to read.")
    private List<Path> files;

    @Option(names = "--add-birds", description = "Add a bird for each catalogue number that the event does not know.")
    private boolean addBirds;

    @Override
    int work() throws Exception {
        EventFolder folder = opened.toChange();
        List<ElementFile> read = ElementImport.read(files, new ConsoleProgress(err()));
        ElementImport found = ElementImport.into(folder.event(), read, number -> addBirds);
        if (!found.isEmpty()) {
            Edit.execute(domain -> found.command(domain, folder, Instant.now().truncatedTo(ChronoUnit.SECONDS)));
            folder.save();
        }
        out().println(found.summary());
        for (ElementSet set : found.unmatched()) {
            out().printf("Left out: %s, catalogue number %d. Add it with --add-birds.%n", set.label(),
                    set.catalogueNumber());
        }
        return StraddleCommand.DONE;
    }
}
