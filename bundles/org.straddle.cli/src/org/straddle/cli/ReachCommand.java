package org.straddle.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.InertText;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Reach;
import org.straddle.sky.prediction.CommonView;
import org.straddle.words.Catalogue;
import org.straddle.worth.ChaserGroup;
import org.straddle.worth.EventWorth;
import org.straddle.worth.TurnChance;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code reach EVENT --to SQUARE}: from which sites, and when, a far place can be worked, and how high the bird is at both ends. */
@Command(name = "reach")
final class ReachCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(ReachCommand.class);

    private record Row(Site site, Bird bird, CommonView view, TurnChance chance) {
    }

    @Mixin
    private Rows rows;

    @Option(names = "--to", required = true, paramLabel = "PLACE")
    private String to;

    @Option(names = "--site", paramLabel = "NAME")
    private String site;

    @Option(names = "--bird", paramLabel = "NAME")
    private String bird;

    @Option(names = "--least-elevation", paramLabel = "DEG")
    private Double leastDeg;

    @Override
    int work() throws Exception {
        if (leastDeg != null && !(leastDeg >= 0 && leastDeg < 90)) {
            throw new WrongInput(TEXTS.text("reachCommand.leastMustLie", "leastDeg", leastDeg));
        }
        List<Site> sites = site == null ? opened.event().getSites()
                : List.of(OpenEvent.site(site, opened.event()));
        List<Bird> birds = bird == null ? opened.event().getBirds()
                : List.of(OpenEvent.bird(bird, opened.event()));
        Optional<Square> square = Square.named(to);
        Region region = square.isPresent() ? null : region();
        Outlook outlook = opened.outlook(err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        Reach reach = leastDeg == null ? outlook.reach() : outlook.reach().above(leastDeg);
        if (region != null && !reach.regions().contains(region)) {
            return StraddleCommand.WRONG_INPUT;
        }
        EventWorth worth = EventWorth.of(outlook);
        // Bird after bird: what the chasers see of one is asked once for all sites.
        List<Row> found = birds.stream().flatMap(one -> sites.stream().filter(outlook::isPlaced)
                .flatMap(site -> (square.isPresent()
                        ? reach.views(site, one, square.get()) : reach.views(site, one, region)).stream()
                                .map(view -> new Row(site, one, view, worth.chance(site, one, view.window())))))
                .sorted(Comparator.comparing((Row row) -> row.view.window().start())
                        .thenComparing(row -> String.valueOf(row.site.getName()))).toList();
        rows.print(table(found, worth, there(square, region)), out());
        if (rows.forPeople()) {
            out().println(TEXTS.text("reachCommand.windowsAboveBoth", "windows", found.size(),
                    "place", square.map(Square::name).orElseGet(() -> InertText.line(region.getName())), "leastDeg", reach.leastDeg()));
            out().println(TEXTS.text("reachCommand.brings"));
        }
        return StraddleCommand.DONE;
    }

    private Region region() throws Exception {
        List<Region> regions = opened.event().getRegions();
        if (regions.isEmpty()) {
            throw new WrongInput(TEXTS.text("reachCommand.squareSuchAs", "to", to));
        }
        return OpenEvent.named(to, regions, region -> String.valueOf(region.getName()), TEXTS.text("reachCommand.squareRegion"));
    }

    /** Those groups of chasers that live in the place that was asked for. */
    private static Predicate<ChaserGroup> there(Optional<Square> square, Region region) {
        return group -> square.isPresent() ? group.region().isEmpty() && group.name().equals(square.get().name())
                : group.region().filter(region::equals).isPresent();
    }

    private static Table table(List<Row> found, EventWorth worth, Predicate<ChaserGroup> there) {
        Table table = new Table(Table.column("site"), Table.column("bird"),
                Table.column("start"), Table.column("end"), Table.column("minutes"),
                Table.column("best"), Table.column("elevationHereDeg"),
                Table.column("elevationThereDeg"), Table.column("birdState"),
                Table.column("brings"), Table.column("bringsThere"));
        for (Row row : found) {
            CommonView view = row.view;
            table.row(row.site.getName(), row.bird.getName(), Rounded.second(view.window().start()), Rounded.second(view.window().end()),
                    Rounded.tenths(view.window().duration().toMillis() / 60_000.0), Rounded.second(view.best()),
                    Rounded.tenths(view.hereDeg()), Rounded.tenths(view.thereDeg()),
                    BirdMarks.of(worth.outlook(), row.bird, view.window()), Rounded.tenths(row.chance.alone(worth.groups())),
                    worth.groups().stream().anyMatch(there) ? Rounded.tenths(row.chance.alone(worth.groups(), there)) : null);
        }
        return table;
    }
}
