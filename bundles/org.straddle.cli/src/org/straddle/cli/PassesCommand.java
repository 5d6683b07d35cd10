package org.straddle.cli;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code passes EVENT}: every pass of every bird over every site during the event. */
@Command(name = "passes")
final class PassesCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PassesCommand.class);

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("EEE HH:mm:ss", java.util.Locale.ENGLISH);

    /** Of a bird that is above the mask through the longest event. */
    private static final int MINUTES = 7;

    @Mixin
    private Rows rows;

    @Option(names = "--site", paramLabel = "NAME")
    private String site;

    @Option(names = "--bird", paramLabel = "NAME")
    private String bird;

    @Option(names = "--least-peak", paramLabel = "DEG", defaultValue = "0")
    private double leastPeakDeg;

    @Option(names = "--reach")
    private boolean withReach;

    @Override
    int work() throws Exception {
        Site onlySite = site == null ? null
                : OpenEvent.named(site, opened.event().getSites(), Site::getName, StraddlePackage.Literals.SITE);
        Bird onlyBird = bird == null ? null
                : OpenEvent.named(bird, opened.event().getBirds(), Bird::getName, StraddlePackage.Literals.BIRD);
        Outlook outlook = opened.outlookToWalk(err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        long[] count = {0};
        Stream<SitePass> passes = outlook.passesInOrder(each -> onlySite == null || each == onlySite, each -> onlyBird == null || each == onlyBird)
                .filter(p -> p.pass().peakElevationDeg() >= leastPeakDeg).peek(p -> count[0]++);
        rows.print(new Table(columns(), () -> passes.map(pass -> row(pass, outlook)).iterator()), out());
        if (rows.forPeople()) {
            out().println(TEXTS.text("passesCommand.passesLocal", "count", count[0], "zone", outlook.zone()));
            outlook.orientationNotice().ifPresent(out()::println);
        }
        return StraddleCommand.DONE;
    }

    /** Names may come late that are wider than those of the first rows. */
    private List<Table.Column> columns() throws EventFolderException {
        Event event = opened.event();
        List<Table.Column> columns = new ArrayList<>(List.of(
                Table.column("site", widest(event.getSites().stream().map(Site::getName))),
                Table.column("squares", widest(event.getSites().stream().map(each -> String.join(" ", each.getSquares())))),
                Table.column("bird", widest(event.getBirds().stream().map(Bird::getName))), Table.column("aos"),
                Table.column("aosLocal"), Table.column("tca"), Table.column("los"),
                Table.column("minutes", MINUTES), Table.column("aosAzimuthDeg"), Table.column("tcaAzimuthDeg"),
                Table.column("losAzimuthDeg"), Table.column("peakElevationDeg"),
                Table.column("leastRangeKm"), Table.column("cut", "startend".length()),
                Table.column("birdState", BirdMarks.WIDEST)));
        if (withReach) {
            columns.add(Table.column("reachPercent"));
        }
        return columns;
    }

    private static int widest(Stream<String> names) {
        return names.mapToInt(name -> name == null ? 0 : InertText.line(name).length()).max().orElse(0);
    }

    private List<Object> row(SitePass row, Outlook outlook) {
        Pass pass = row.pass();
        List<Object> values = new ArrayList<>(Arrays.asList(row.site().getName(),
                List.copyOf(row.site().getSquares()), row.bird().getName(), second(pass.aos()),
                LOCAL.format(second(pass.aos()).atZone(outlook.zone())), second(pass.tca()), second(pass.los()),
                rounded(pass.duration().toMillis() / 60_000.0, 10), rounded(pass.aosAzimuthDeg(), 1),
                rounded(pass.tcaAzimuthDeg(), 1), rounded(pass.losAzimuthDeg(), 1),
                rounded(pass.peakElevationDeg(), 10), rounded(pass.minRangeKm(), 1),
                (pass.startsBefore() ? "start" : "") + (pass.endsAfter() ? "end" : ""),
                BirdMarks.of(outlook, row.bird(), pass.window())));
        if (withReach) {
            values.add(outlook.reach().of(row).map(reach -> rounded(100 * reach.mean(), 1)).orElse(null));
        }
        return values;
    }

    /** To the nearest second: finer would promise more than element sets hold. */
    private static Instant second(Instant instant) {
        return instant.plusMillis(500).truncatedTo(ChronoUnit.SECONDS);
    }

    private static double rounded(double value, double steps) {
        return Math.round(value * steps) / steps;
    }
}
