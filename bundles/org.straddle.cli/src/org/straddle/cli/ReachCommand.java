package org.straddle.cli;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Reach;
import org.straddle.sky.CommonView;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code reach EVENT --to SQUARE}: from which sites, and when, a far place can be worked, and how high the bird is at both ends. */
@Command(name = "reach", description = { "List when a far square or region can be worked from the sites.",
    "The bird must stand above the site's mask here, and above an elevation at both ends. A square counts by its middle; "
        + "of a region, the place that sees the bird highest. Whether the bird is switched on is not asked." })
final class ReachCommand extends EventCommand {

    private record Row(Site site, Bird bird, CommonView view) {
    }

    @Mixin
    private Rows rows;

    @Option(names = "--to", required = true, paramLabel = "PLACE",
            description = "A square such as JO01, or a region of the event (a part of its name will do).")
    private String to;

    @Option(names = "--from", paramLabel = "SITE", description = "Only this site (a part of its name will do).")
    private String from;

    @Option(names = "--bird", paramLabel = "NAME", description = "Only this bird (a part of its name will do).")
    private String bird;

    @Option(names = "--least", paramLabel = "DEG",
            description = "Elevation that the bird must stand above at both ends, degrees (default: the event's policy).")
    private Double leastDeg;

    @Override
    int work() throws Exception {
        if (leastDeg != null && !(leastDeg >= 0 && leastDeg < 90)) {
            throw new WrongInput("--least must lie between 0 and 90 degrees, not at " + leastDeg + ".");
        }
        List<Site> sites = from == null ? opened.event().getSites()
                : List.of(OpenEvent.named(from, opened.event().getSites(), Site::getName, "site"));
        List<Bird> birds = bird == null ? opened.event().getBirds()
                : List.of(OpenEvent.named(bird, opened.event().getBirds(), Bird::getName, "bird"));
        Optional<Square> square = square();
        Region region = square.isPresent() ? null : region();
        Outlook outlook = opened.outlook(err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        Reach reach = leastDeg == null ? outlook.reach() : outlook.reach().above(leastDeg);
        if (region != null && !reach.regions().contains(region)) {
            return StraddleCommand.WRONG_INPUT;
        }
        List<Row> found = sites.stream().filter(outlook::isPlaced)
                .flatMap(site -> birds.stream().flatMap(one -> (square.isPresent()
                        ? reach.views(site, one, square.get()) : reach.views(site, one, region)).stream()
                                .map(view -> new Row(site, one, view))))
                .sorted(Comparator.comparing((Row row) -> row.view.window().start())
                        .thenComparing(row -> String.valueOf(row.site.getName()))).toList();
        rows.print(table(found), out());
        if (rows.forPeople()) {
            out().printf(Locale.ROOT, "%d windows to %s above %.1f° at both ends; times in UTC%n", found.size(),
                    square.map(Square::name).orElseGet(() -> region.getName()), reach.leastDeg());
        }
        return StraddleCommand.DONE;
    }

    private Optional<Square> square() {
        try {
            return Optional.of(Square.parse(to));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Region region() throws Exception {
        List<Region> regions = opened.event().getRegions();
        if (regions.isEmpty()) {
            throw new WrongInput("'" + to + "' is no square such as JO01, and the event has no regions.");
        }
        return OpenEvent.named(to, regions, region -> String.valueOf(region.getName()), "square or region");
    }

    private static Table table(List<Row> found) {
        Table table = new Table(Table.column("site", "Site"), Table.column("bird", "Bird"),
                Table.column("start", "Start (UTC)"), Table.column("end", "End (UTC)"), Table.column("minutes", "min"),
                Table.column("best", "Best (UTC)"), Table.column("elevationHereDeg", "here°"),
                Table.column("elevationThereDeg", "there°"));
        for (Row row : found) {
            CommonView view = row.view;
            table.row(row.site.getName(), row.bird.getName(), second(view.window().start()), second(view.window().end()),
                    rounded(view.window().duration().toMillis() / 60_000.0), second(view.best()), rounded(view.hereDeg()),
                    rounded(view.thereDeg()));
        }
        return table;
    }

    /** To the nearest second: finer would promise more than element sets hold. */
    private static Instant second(Instant instant) {
        return instant.plusMillis(500).truncatedTo(ChronoUnit.SECONDS);
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
