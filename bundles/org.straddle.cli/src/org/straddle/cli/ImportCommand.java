package org.straddle.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.exchange.ElementFile;
import org.straddle.exchange.ElementImport;
import org.straddle.exchange.OrientationFile;
import org.straddle.exchange.SkyFiles;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import EVENT FILE…}: takes element sets and Earth orientation into the event. */
@Command(name = "import", description = { "Take element sets from TLE files (two or three lines) or OMM files (KVN, XML, JSON, CSV),",
    "and Earth orientation from finals2000A or eopc04 files of the IERS. What a file is shows in its content.",
    "When anything in a file is wrong, nothing is changed." })
final class ImportCommand extends EventCommand {

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Files to read.")
    private List<Path> files;

    @Option(names = "--add-birds", description = "Add a bird for each catalogue number that the event does not know.")
    private boolean addBirds;

    @Override
    int work() throws Exception {
        EventFolder folder = opened.toChange();
        SkyFiles read = SkyFiles.read(files, new ConsoleProgress(err()));
        for (OrientationFile orientation : read.orientation()) {
            out().println(orientation.keepIn(folder));
        }
        if (!read.elements().isEmpty()) {
            take(read.elements(), folder);
        }
        return StraddleCommand.DONE;
    }

    private void take(List<ElementFile> elements, EventFolder folder) throws EventFolderException {
        ElementImport found = ElementImport.into(folder.event(), elements, number -> addBirds);
        if (!found.isEmpty()) {
            Edit.execute(domain -> found.command(domain, folder, Instant.now().truncatedTo(ChronoUnit.SECONDS)));
            folder.save();
        }
        out().println(found.summary());
        for (ElementSet set : found.unmatched()) {
            out().printf("Left out: %s, catalogue number %d. Add it with --add-birds.%n", set.label(),
                    set.catalogueNumber());
        }
    }
}
