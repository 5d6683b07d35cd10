package org.straddle.cli;

import java.nio.file.Path;
import java.util.List;

import org.straddle.grid.GeoPosition;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.sky.Horizon;
import org.straddle.store.EventFolder;
import org.straddle.visit.SiteVisits;
import org.straddle.terrain.HorizonRequest;
import org.straddle.terrain.TerrainHorizon;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code horizon EVENT --site S --raster FILE…}: the mask of a site out of elevation rasters. */
@Command(name = "horizon")
final class HorizonCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(HorizonCommand.class);

    @Option(names = "--site", required = true, paramLabel = "NAME")
    private String name;

    @Option(names = "--raster", required = true, arity = "1..*", paramLabel = "FILE")
    private List<Path> rasters;

    @Option(names = "--antenna", paramLabel = "M", defaultValue = "2")
    private double antennaM;

    @Option(names = "--k", paramLabel = "K", defaultValue = "0.13")
    private double refraction;

    @Option(names = "--far", paramLabel = "KM", defaultValue = "50")
    private double farthestKm;

    @Option(names = "--wgs84")
    private boolean takeForWgs84;

    @Option(names = "--dry-run")
    private boolean dryRun;

    @Mixin
    private Rows rows;

    @Override
    int work() throws Exception {
        Site site = OpenEvent.site(name, opened.toChange(dryRun).event());
        TerrainHorizon computed = TerrainHorizon.compute(rasters, request(site), new ConsoleProgress(err()));
        if (!dryRun) {
            EventFolder folder = opened.toChange();
            Edit.execute(domain -> SiteVisits.setHorizon(domain, site, computed.mask(), computed.origin()));
            folder.save();
        }
        Table table = new Table(Table.column("azimuthDeg"), Table.column("elevationDeg"));
        for (Horizon.Point point : computed.mask().points()) {
            table.row(point.azimuthDeg(), point.elevationDeg());
        }
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(computed.origin());
            computed.remarks().forEach(out()::println);
            out().println(dryRun ? TEXTS.text("importCommand.nothingChanged")
                    : TEXTS.text("horizonCommand.changed", "site", InertText.line(site.getName())));
        }
        return StraddleCommand.DONE;
    }

    private HorizonRequest request(Site site) {
        try {
            return new HorizonRequest(new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg()), antennaM, refraction,
                    farthestKm * 1000, takeForWgs84);
        } catch (IllegalArgumentException e) {
            throw new WrongInput(TEXTS.text("horizonCommand.giveValueCorrect", "reason", e.getMessage(),
                    "site", InertText.line(site.getName())));
        }
    }
}
