package org.straddle.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.straddle.grid.GeoPosition;
import org.straddle.model.Site;
import org.straddle.sky.Horizon;
import org.straddle.store.EventFolder;
import org.straddle.survey.Visit;
import org.straddle.terrain.HorizonRequest;
import org.straddle.terrain.TerrainHorizon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code horizon EVENT --site S --raster FILE…}: the mask of a site out of elevation rasters. */
@Command(name = "horizon", description = { "Compute the horizon mask of a site from elevation rasters (GeoTIFF, ArcGrid).",
    "The mask replaces that of the site; surveys stay as they are. Trees and houses count only where the rasters have them." })
final class HorizonCommand extends EventCommand {

    @Option(names = "--site", required = true, paramLabel = "NAME", description = "The site.")
    private String name;

    @Option(names = "--raster", required = true, arity = "1..*", paramLabel = "FILE",
            description = "Elevation rasters around the site: one or more GeoTIFF or ArcGrid (.asc) files with heights in metres.")
    private List<Path> rasters;

    @Option(names = "--antenna", paramLabel = "M", defaultValue = "2",
            description = "Height of the antenna above the ground, metres (default ${DEFAULT-VALUE}).")
    private double antennaM;

    @Option(names = "--k", paramLabel = "K", defaultValue = "0.13",
            description = "Refraction coefficient: 0.13 for light, 0.25 for an Earth of 4/3 radius (default ${DEFAULT-VALUE}).")
    private double refraction;

    @Option(names = "--far", paramLabel = "KM", defaultValue = "50",
            description = "How far to look, kilometres (default ${DEFAULT-VALUE}).")
    private double farthestKm;

    @Option(names = "--wgs84", description = "Take rasters that do not say their coordinate reference system for EPSG:4326.")
    private boolean takeForWgs84;

    @Option(names = "--dry-run", description = "Print the mask and change nothing.")
    private boolean dryRun;

    @Mixin
    private Rows rows;

    @Override
    int work() throws Exception {
        Site site = OpenEvent.named(name, opened.toChange(dryRun).event().getSites(), Site::getName, "site");
        TerrainHorizon computed = TerrainHorizon.compute(rasters, request(site), new ConsoleProgress(err()));
        if (!dryRun) {
            EventFolder folder = opened.toChange();
            Edit.execute(domain -> Visit.setHorizon(domain, site, computed.mask(), computed.origin()));
            folder.save();
        }
        Table table = new Table(Table.column("azimuthDeg", "Azimuth°"), Table.column("elevationDeg", "Elevation°"));
        for (Horizon.Point point : computed.mask().points()) {
            table.row(point.azimuthDeg(), point.elevationDeg());
        }
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(computed.origin());
            computed.remarks().forEach(out()::println);
            out().printf(Locale.ENGLISH, dryRun ? "Nothing was changed.%n" : "The horizon of %s was changed.%n", site.getName());
        }
        return StraddleCommand.DONE;
    }

    private HorizonRequest request(Site site) {
        try {
            return new HorizonRequest(new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()), antennaM, refraction,
                    farthestKm * 1000, takeForWgs84);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(e.getMessage() + "\nGive another value, or correct the position of " + site.getName() + ".");
        }
    }
}
