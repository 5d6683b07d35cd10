package org.straddle.cli;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Site;
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
                : OpenEvent.site(site, opened.event());
        Bird onlyBird = bird == null ? null
                : OpenEvent.bird(bird, opened.event());
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
                List.copyOf(row.site().getSquares()), row.bird().getName(), Rounded.second(pass.aos()),
                LOCAL.format(Rounded.second(pass.aos()).atZone(outlook.zone())), Rounded.second(pass.tca()),
                Rounded.second(pass.los()),
                Rounded.tenths(pass.duration().toMillis() / 60_000.0), Rounded.whole(pass.aosAzimuthDeg()),
                Rounded.whole(pass.tcaAzimuthDeg()), Rounded.whole(pass.losAzimuthDeg()),
                Rounded.tenths(pass.peakElevationDeg()), Rounded.whole(pass.minRangeKm()),
                (pass.startsBefore() ? "start" : "") + (pass.endsAfter() ? "end" : ""),
                BirdMarks.of(outlook, row.bird(), pass.window())));
        if (withReach) {
            values.add(outlook.reach().of(row).map(reach -> Rounded.whole(100 * reach.mean())).orElse(null));
        }
        return values;
    }
}
