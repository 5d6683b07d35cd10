package org.straddle.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementImport;
import org.straddle.exchange.elements.OrientationFile;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.exchange.formats.FileKind;
import org.straddle.exchange.maps.LayerImport;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import EVENT FILE…}: takes element sets, Earth orientation, sites or map layers into the event. */
@Command(name = "import", description = {
    "Take in element sets, Earth orientation, sites, or layers of the map.",
    "Reads element sets from TLE files (two or three lines) or OMM files (KVN, XML, JSON, CSV); Earth orientation from"
    + " finals2000A or eopc04 files of the IERS; sites from CSV files, GPX waypoints or GeoJSON points; or, with --layer,"
    + " roads and other things from GPX and GeoJSON files. What a file is shows in its content. When anything in a file is wrong, nothing is changed." })
final class ImportCommand extends EventCommand {

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE", description = "Files to read.")
    private List<Path> files;

    @Option(names = "--dry-run", description = "Tell what would change, and change nothing.")
    private boolean dryRun;

    @Option(names = "--swap", negatable = true,
            description = "Latitude and longitude are the other way round in the file, or are not although it seems so.")
    private Boolean swap;

    @Mixin
    private Rows rows;

    @ArgGroup(validate = false, heading = "%nElement sets:%n")
    private Elements elements = new Elements();

    @ArgGroup(validate = false, heading = "%nSites:%n")
    private SiteImportRun sites = new SiteImportRun();

    @ArgGroup(validate = false, heading = "%nMap layers:%n")
    private Layers layers = new Layers();

    private static final class Elements {

        @Option(names = "--add-birds", description = "Add a bird for each catalogue number that the event does not know.")
        private boolean addBirds;
    }

    private static final class Layers {

        @Option(names = "--layer", paramLabel = "ROLE", arity = "0..1", fallbackValue = "",
                description = { "Take the files as layers: road (to be scouted), other-road, power-line, building, railway, quarry,",
                    "plain (only to look at), or a word of your own; without a word each thing counts as what it says itself." })
        private String role;

        @Option(names = "--title", paramLabel = "TEXT", description = "What to call the layer (default: the name of its file).")
        private String title = "";
    }

    @Override
    int work() throws Exception {
        EventFolder folder = opened.toChange(dryRun);
        if (layers.role != null) {
            return importLayers(folder);
        }
        FileKind kind = FileKind.of(files.get(0));
        for (Path file : files) {
            if (FileKind.of(file) != kind) {
                throw new WrongInput(files.get(0).getFileName() + " and " + file.getFileName()
                        + " hold different things.\nImport sites and element sets one after the other.");
            }
        }
        return kind == FileKind.SITES ? sites.run(folder, files, swap, dryRun, rows, out(), err()) : importSky(folder);
    }

    private int importSky(EventFolder folder) throws Exception {
        SkyFiles read = SkyFiles.read(files, new ConsoleProgress(err()));
        for (OrientationFile orientation : read.orientation()) {
            out().println(dryRun ? "Earth orientation can be read." : orientation.keepIn(folder));
        }
        if (!read.elements().isEmpty()) {
            take(read.elements(), folder);
        }
        sayIfDry();
        return StraddleCommand.DONE;
    }

    private void take(List<ElementFile> read, EventFolder folder) throws EventFolderException {
        ElementImport found = ElementImport.into(folder.event(), read, number -> elements.addBirds);
        if (!found.isEmpty() && !dryRun) {
            Edit.execute(domain -> found.command(domain, folder, Instant.now().truncatedTo(ChronoUnit.SECONDS)));
            folder.save();
        }
        out().println(found.summary());
        for (ElementSet set : found.unmatched()) {
            out().printf("Left out: %s, catalogue number %d. Add it with --add-birds.%n", set.label(),
                    set.catalogueNumber());
        }
    }

    private int importLayers(EventFolder folder) throws Exception {
        LayerRole role;
        try {
            role = new LayerRole(layers.role);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage());
        }
        for (Path file : files) {
            LayerImport layer = read(file);
            if (swap == null && layer.swapOffered(folder.event())) {
                throw new WrongInput(layer.map().name() + ": it is far from the event, but near with latitude and longitude exchanged."
                        + "\nGive --swap to read it so, or --no-swap to take it as it is.");
            }
            layer.map().remarks().forEach(remark -> err().println(layer.map().name() + ", " + remark));
            Edit.execute(domain -> layer.command(domain, folder, role, layers.title));
            int things = layer.map().features().size();
            out().printf("%s: %d %s as a layer: %s.%n", layer.map().name(), things, things == 1 ? "thing" : "things", role.label());
        }
        if (!dryRun) {
            folder.save();
        }
        sayIfDry();
        return StraddleCommand.DONE;
    }

    private LayerImport read(Path file) throws ReadException {
        try {
            return LayerImport.read(file, Boolean.TRUE.equals(swap) ? CoordinateOrder.SWAPPED : CoordinateOrder.OF_THE_FORMAT,
                    new ConsoleProgress(err()));
        } catch (ReadException e) {
            if (e.getCause() instanceof CoordinateOutOfRange place && place.fitsSwapped()) {
                throw new WrongInput(e.getMessage() + (Boolean.TRUE.equals(swap) ? " (Leave out --swap.)" : " (Give --swap.)"));
            }
            throw e;
        }
    }

    private void sayIfDry() {
        if (dryRun) {
            out().println("Nothing was changed.");
        }
    }
}
