package org.straddle.cli;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code passes EVENT}: every pass of every bird over every site during the event. */
@Command(name = "passes")
final class PassesCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PassesCommand.class);

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("EEE HH:mm:ss", java.util.Locale.ENGLISH);

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
        Outlook outlook = opened.outlook(err());
        outlook.troubles().forEach(trouble -> err().println(trouble.sentence()));
        List<SitePass> passes = outlook.passes().stream()
                .filter(p -> onlySite == null || p.site() == onlySite)
                .filter(p -> onlyBird == null || p.bird() == onlyBird)
                .filter(p -> p.pass().peakElevationDeg() >= leastPeakDeg).toList();
        rows.print(table(passes, outlook), out());
        if (rows.forPeople()) {
            out().println(TEXTS.text("passesCommand.passesTimesUtc", "passes", passes.size(), "zone", outlook.zone()));
            outlook.orientationNotice().ifPresent(out()::println);
        }
        return StraddleCommand.DONE;
    }

    private Table table(List<SitePass> passes, Outlook outlook) {
        List<Table.Column> columns = new ArrayList<>(List.of(Table.column("site"), Table.column("squares"),
                Table.column("bird"), Table.column("aos"), Table.column("aosLocal"),
                Table.column("tca"), Table.column("los"), Table.column("minutes"),
                Table.column("aosAzimuthDeg"), Table.column("tcaAzimuthDeg"),
                Table.column("losAzimuthDeg"), Table.column("peakElevationDeg"),
                Table.column("leastRangeKm"), Table.column("cut")));
        if (withReach) {
            columns.add(Table.column("reachPercent"));
        }
        Table table = new Table(columns.toArray(Table.Column[]::new));
        ZoneId zone = outlook.zone();
        for (SitePass row : passes) {
            Pass pass = row.pass();
            List<Object> values = new ArrayList<>(Arrays.asList(row.site().getName(),
                    List.copyOf(row.site().getSquares()), row.bird().getName(), second(pass.aos()),
                    LOCAL.format(second(pass.aos()).atZone(zone)), second(pass.tca()), second(pass.los()),
                    rounded(pass.duration().toMillis() / 60_000.0, 10), rounded(pass.aosAzimuthDeg(), 1),
                    rounded(pass.tcaAzimuthDeg(), 1), rounded(pass.losAzimuthDeg(), 1),
                    rounded(pass.peakElevationDeg(), 10), rounded(pass.minRangeKm(), 1),
                    (pass.startsBefore() ? "start" : "") + (pass.endsAfter() ? "end" : "")));
            if (withReach) {
                values.add(outlook.reach().of(row).map(reach -> rounded(100 * reach.mean(), 1)).orElse(null));
            }
            table.row(values.toArray());
        }
        return table;
    }

    /** To the nearest second: finer would promise more than element sets hold. */
    private static Instant second(Instant instant) {
        return instant.plusMillis(500).truncatedTo(ChronoUnit.SECONDS);
    }

    private static double rounded(double value, double steps) {
        return Math.round(value * steps) / steps;
    }
}
