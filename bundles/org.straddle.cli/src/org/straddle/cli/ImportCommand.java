package org.straddle.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.CoordinateOutOfRange;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.chasers.ChaserImport;
import org.straddle.exchange.chasers.ChaserList;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementImport;
import org.straddle.exchange.elements.OrientationFile;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.exchange.formats.FileKind;
import org.straddle.exchange.maps.LayerImport;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.kit.table.KitFile;
import org.straddle.kit.table.KitImport;
import org.straddle.sky.ElementSet;
import org.straddle.exchange.weather.ForecastImport;
import org.straddle.exchange.weather.ForecastTable;
import org.straddle.model.Site;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code import EVENT FILE…}: takes element sets, Earth orientation, sites or map layers into the event. */
@Command(name = "import")
final class ImportCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(ImportCommand.class);

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE")
    private List<Path> files;

    @Option(names = "--dry-run")
    private boolean dryRun;

    @Option(names = "--swap", negatable = true)
    private Boolean swap;

    @Mixin
    private Rows rows;

    @ArgGroup(validate = false, headingKey = "straddle.import.heading.elements")
    private Elements elements = new Elements();

    @ArgGroup(validate = false, headingKey = "straddle.import.heading.sites")
    private SiteImportRun sites = new SiteImportRun();

    @ArgGroup(validate = false, headingKey = "straddle.import.heading.layers")
    private Layers layers = new Layers();

    private static final class Elements {

        @Option(names = "--add-birds")
        private boolean addBirds;
    }

    @Option(names = "--chasers")
    private boolean chasers;

    @Option(names = "--forecast", paramLabel = "SITE")
    private String forecast;

    @Option(names = "--kits")
    private boolean kits;

    @Option(names = "--kit", paramLabel = "NAME")
    private String kit;

    private static final class Layers {

        @Option(names = "--layer", paramLabel = "ROLE", arity = "0..1", fallbackValue = "")
        private String role;

        @Option(names = "--title", paramLabel = "TEXT")
        private String title = "";
    }

    @Override
    int work() throws Exception {
        EventFolder folder = opened.toChange(dryRun);
        if (layers.role != null) {
            return importLayers(folder);
        }
        if (chasers) {
            return importChasers(folder);
        }
        if (forecast != null) {
            return importForecasts(folder);
        }
        if (kits || kit != null) {
            return importKits(folder);
        }
        FileKind kind = FileKind.of(files.get(0));
        for (Path file : files) {
            if (FileKind.of(file) != kind) {
                throw new WrongInput(TEXTS.text("importCommand.holdDifferentThings",
                        "first", files.get(0).getFileName(), "second", file.getFileName()));
            }
        }
        return kind == FileKind.SITES ? sites.run(folder, files, swap, dryRun, rows, out(), err()) : importSky(folder);
    }

    private int importSky(EventFolder folder) throws Exception {
        SkyFiles read = SkyFiles.read(files, new ConsoleProgress(err()));
        for (OrientationFile orientation : read.orientation()) {
            out().println(dryRun ? TEXTS.text("importCommand.earthOrientationCan") : orientation.keepIn(folder));
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
            out().println(TEXTS.text("importCommand.leftOutCatalogue", "set", set.label(),
                    "catalogueNumber", set.catalogueNumber()));
        }
    }

    /** All files are read before anything is changed; a line that cannot be read stops all, unless somebody asked to skip it. */
    private int importChasers(EventFolder folder) throws Exception {
        Map<Path, ChaserList> lists = new LinkedHashMap<>();
        List<String> refused = new ArrayList<>();
        for (Path file : files) {
            ChaserList list = ChaserList.read(SourceFile.read(file));
            list.refused().forEach(line -> refused.add(TEXTS.text("importCommand.chaserRefused",
                    "file", file.getFileName(), "line", line.line(), "why", line.why(), "skipped", sites.isPartial())));
            lists.put(file, list);
        }
        if (!refused.isEmpty() && !sites.isPartial()) {
            throw new WrongInput(TEXTS.text("importCommand.chasersUnread", "first", refused.get(0), "refused", refused.size()));
        }
        refused.forEach(err()::println);
        for (Map.Entry<Path, ChaserList> read : lists.entrySet()) {
            ChaserList list = read.getValue();
            ChaserImport found = ChaserImport.into(folder.event(), list);
            if (!found.isEmpty()) {
                Edit.execute(found::command);
            }
            out().println(TEXTS.text("importCommand.chasers", "file", read.getKey().getFileName(),
                    "summary", found.summary(list)));
        }
        if (!dryRun) {
            folder.save();
        }
        sayIfDry();
        return StraddleCommand.DONE;
    }

    private int importForecasts(EventFolder folder) throws Exception {
        Site site = OpenEvent.site(forecast, folder.event());
        for (Path file : files) {
            SourceFile source = SourceFile.read(file);
            ForecastImport found = ForecastImport.into(folder.event(), site, ForecastTable.read(source), source.name());
            Edit.execute(found::command);
            out().println(found.summary());
        }
        if (!dryRun) {
            folder.save();
        }
        sayIfDry();
        return StraddleCommand.DONE;
    }

    /** All files or nothing. */
    private int importKits(EventFolder folder) throws Exception {
        for (Path file : files) {
            SourceTable table = KitFile.read(file);
            KitImport found = KitImport.into(folder.event(), table, kit == null || kit.isBlank() ? withoutEnding(table.name()) : kit.strip());
            if (!found.refused().isEmpty()) {
                throw new WrongInput(RefusedLines.of(found.refused(), refused -> TEXTS.text("importCommand.kitRefused",
                        "file", table.name(), "line", refused.line(), "why", refused.why())));
            }
            Stream.concat(table.remarks().stream(), found.remarks().stream()).forEach(remark -> err().println(TEXTS.text(
                    "importCommand.kitRemark", "file", table.name(), "remark", remark)));
            if (!found.isEmpty()) {
                Edit.execute(found::command);
            }
            out().println(TEXTS.text("importCommand.kits", "file", table.name(), "added", found.added().size(), "changed",
                    found.changed().size(), "known", found.known()));
        }
        if (!dryRun) {
            folder.save();
        }
        sayIfDry();
        return StraddleCommand.DONE;
    }

    private static String withoutEnding(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
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
                throw new WrongInput(TEXTS.text("importCommand.farFromEvent", "layer", layer.map().name()));
            }
            layer.map().remarks().forEach(remark -> err().println(layer.map().name() + ", " + remark));
            Edit.execute(domain -> layer.command(domain, folder, role, layers.title));
            int things = layer.map().features().size();
            out().println(TEXTS.text("importCommand.asLayer", "layer", layer.map().name(), "things", things, "role", role.label()));
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
                throw new WrongInput(e.getMessage() + (Boolean.TRUE.equals(swap)
                        ? TEXTS.text("importCommand.leaveOutSwap") : TEXTS.text("importCommand.giveSwap")));
            }
            throw e;
        }
    }

    private void sayIfDry() {
        if (dryRun) {
            out().println(TEXTS.text("importCommand.nothingChanged"));
        }
    }
}
