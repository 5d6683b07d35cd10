package org.straddle.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.kit.Packing;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.asked.Provided;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.kit.table.KitColumn;
import org.straddle.kit.table.KitFile;
import org.straddle.kit.table.KitTemplates;
import org.straddle.kit.table.TickImport;
import org.straddle.kit.team.Practice;
import org.straddle.kit.team.Resilience;
import org.straddle.kit.team.ResilienceText;
import org.straddle.kit.team.SharedSpare;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Task;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Kit;
import org.straddle.model.Operator;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.publish.packing.PackingPage;
import org.straddle.publish.packing.PackingPdf;
import org.straddle.publish.packing.PackingSheet;
import org.straddle.publish.site.SiteSheetPdf;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code pack EVENT}: what each team takes along, and what it lacks. */
@Command(name = "pack")
final class PackCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PackCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--team", paramLabel = "T")
    private String team;

    @ArgGroup(exclusive = true)
    private Instead instead = new Instead();

    /** What is printed in place of the list. */
    private static final class Instead {

        @Option(names = "--single-points")
        private boolean singlePoints;

        @Option(names = "--shared")
        private boolean shared;

        @Option(names = "--practice")
        private boolean practice;

        @Option(names = "--template", paramLabel = "NAME")
        private String template;

        @Option(names = "--save-template", paramLabel = "KIT")
        private String saveTemplate;

        @Option(names = "--ticks", paramLabel = "FILE")
        private Path ticks;

        @Option(names = "--out", paramLabel = "DIR")
        private Path out;
    }

    @Option(names = "--make", paramLabel = "KIT")
    private String make;

    @Option(names = "--paper", defaultValue = "a4", paramLabel = "a4|letter")
    private Paper paper;

    /** Sizes of paper, as typed. */
    private enum Paper {
        a4(SiteSheetPdf.Format.A4), letter(SiteSheetPdf.Format.LETTER);

        private final SiteSheetPdf.Format format;

        Paper(SiteSheetPdf.Format format) {
            this.format = format;
        }
    }

    @Override
    int work() throws Exception {
        if (make != null && (instead.template == null || team == null)) {
            throw new WrongInput(TEXTS.text("packCommand.makeAlone"));
        }
        if (instead.template != null) {
            return template(instead.template);
        }
        if (instead.saveTemplate != null) {
            return saveTemplate(instead.saveTemplate);
        }
        if (instead.ticks != null) {
            return ticks(instead.ticks);
        }
        List<Team> teams = opened.event().getTeams();
        if (team != null) {
            teams = List.of(OpenEvent.team(team, opened.event()));
        }
        if (instead.singlePoints) {
            return singlePoints(teams);
        }
        if (instead.shared) {
            return shared(teams);
        }
        if (instead.practice) {
            return practice(teams);
        }
        if (instead.out != null) {
            return sheets(teams);
        }
        if (rows.forPeople()) {
            Outlook outlook = opened.outlookToWalk(err());
            for (Team each : teams) {
                print(each, outlook);
            }
        } else {
            rows.print(whole(teams), out());
        }
        return StraddleCommand.DONE;
    }

    /** Prints it, or makes a kit of it that a team takes along. */
    private int template(String name) throws Exception {
        KitTemplates templates = KitTemplates.ofUser();
        KitTemplates.Template template = templates.named(name).orElseThrow(() -> new WrongInput(TEXTS.text("packCommand.template",
                "name", name, "names", templates.all().stream().map(KitTemplates.Template::name).toList())));
        if (make == null) {
            out().print(template.csv());
            return StraddleCommand.DONE;
        }
        EventFolder folder = opened.toChange();
        Event event = folder.event();
        Team taker = OpenEvent.team(team, event);
        String called = make.strip();
        if (called.isEmpty() || event.getKits().stream().anyMatch(kit -> called.equalsIgnoreCase(kit.getName()))) {
            throw new WrongInput(TEXTS.text("packCommand.taken", "name", called));
        }
        Edit.execute(domain -> template.command(domain, event, taker, called));
        folder.save();
        out().println(TEXTS.text("packCommand.made", "kit", called, "team", Naming.name(taker), "items",
                template.table().rows().size()));
        return StraddleCommand.DONE;
    }

    /** One of the same name stays as it is: nobody is there to be asked. */
    private int saveTemplate(String wanted) throws Exception {
        Kit kit = OpenEvent.named(wanted, opened.event().getKits(), Kit::getName, StraddlePackage.Literals.KIT);
        String name = Naming.name(kit);
        KitTemplates templates = KitTemplates.ofUser();
        if (!KitTemplates.problem(name).isEmpty()) {
            throw new WrongInput(KitTemplates.problem(name));
        }
        if (templates.has(name)) {
            throw new WrongInput(TEXTS.text("packCommand.templateThere", "name", name, "file", templates.file(name)));
        }
        templates.save(name, kit);
        out().println(TEXTS.text("packCommand.templateSaved", "name", name, "file", templates.file(name)));
        return StraddleCommand.DONE;
    }

    /** What phones sent comes into the event, all of it or nothing. */
    private int ticks(Path file) throws Exception {
        EventFolder folder = opened.toChange();
        SourceTable table = KitFile.read(file);
        TickImport found = TickImport.into(folder.event(), table);
        if (!found.refused().isEmpty()) {
            throw new WrongInput(RefusedLines.of(found.refused(), refused -> TEXTS.text("packCommand.tickRefused", "file", table.name(),
                    "line", refused.line(), "why", refused.why())));
        }
        if (!found.isEmpty()) {
            Edit.execute(found::command);
            folder.save();
        }
        out().println(TEXTS.text("packCommand.ticks", "file", table.name(), "summary", found.summary()));
        return StraddleCommand.DONE;
    }

    private void print(Team each, Outlook outlook) {
        Packing packing = Packing.of(each, outlook);
        head(each);
        rows.print(table(each), out());
        out().println();
        packing.remarks().forEach(remark -> say(TEXTS.text("packCommand.remark", "remark", remark)));
        out().println(packing.list().summary());
        packing.energyLines().forEach(this::say);
        packing.bagLines().forEach(this::say);
        if (!packing.asks().things().isEmpty()) {
            out().println();
            out().println(TEXTS.text("packCommand.asked"));
            packing.asks().things().forEach(this::asked);
            packing.asks().marking().forEach(this::say);
            packing.asks().lookout().ifPresent(this::say);
        }
        packing.goingBack().forEach(back -> say(back.sentence()));
        packing.inCar().forEach(car -> say(car.sentence()));
        out().println();
    }

    private void asked(Provided thing) {
        say(TEXTS.text("packCommand.thing", "met", thing.isMet() ? "yes" : "no", "thing", thing.sentence()));
        thing.asked().because().forEach(reason -> say(TEXTS.text("packCommand.because", "reason", reason)));
    }

    private void head(Team each) {
        out().println(TEXTS.text("packCommand.team", "number", each.getNumber(), "each", InertText.line(each.getName() == null ? Naming.name(each) : each.getName())));
    }

    private void say(String line) {
        out().println(InertText.line(line));
    }

    private int singlePoints(List<Team> teams) throws Exception {
        Itinerary itinerary = Itinerary.of(opened.event());
        if (rows.forPeople()) {
            for (Team each : teams) {
                head(each);
                ResilienceText text = new ResilienceText(Resilience.of(each, itinerary));
                (itinerary.of(each).isEmpty() ? List.of(TEXTS.text("packCommand.noWork")) : text.lines()).forEach(this::say);
                out().println();
            }
            return StraddleCommand.DONE;
        }
        Table table = new Table(Table.column("team"), Table.column("work"), Table.column("uplink"), Table.column("downlink"),
                Table.column("possible"), Table.column("order"), Table.column("items"), Table.column("remedy"));
        for (Team each : teams) {
            Resilience resilience = Resilience.of(each, itinerary);
            Stream.concat(resilience.planned().stream(), resilience.further().stream())
                    .forEach(answer -> rows(each, resilience, answer, table));
        }
        rows.print(table, out());
        return StraddleCommand.DONE;
    }

    private static void rows(Team team, Resilience resilience, Answer answer, Table table) {
        Task task = answer.task();
        if (!answer.possible() || answer.single().isEmpty() && answer.pairs().isEmpty()) {
            table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), answer.possible(), 0, null, null);
        }
        answer.single().forEach(gear -> table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), true, 1,
                gear.name(), resilience.remedy(answer, gear).map(Gear::name).orElse(null)));
        answer.pairs().forEach(pair -> table.row(team.getNumber(), task.work().name(), task.uplink(), task.downlink(), true, 2,
                pair.gear().stream().map(Gear::name).collect(Collectors.joining("; ")), null));
    }

    /** Who else has what a team lacks, hour by hour. */
    private int shared(List<Team> teams) throws Exception {
        Outlook outlook = opened.outlookToWalk(err());
        Itinerary itinerary = Itinerary.of(opened.event());
        List<SharedSpare> spares = teams.stream().flatMap(each -> SharedSpare.of(each, outlook, itinerary).stream()).toList();
        Table table = new Table(Table.column("team"), Table.column("failed"), Table.column("holder"), Table.column("piece"),
                Table.column("hour"), Table.column("teamAt"), Table.column("holderAt"), Table.column("roadKm"), Table.column("driveMinutes"),
                Table.column("meetAt"), Table.column("meetMinutes"));
        spares.forEach(spare -> spare.meeting().forEach(meeting -> table.row(spare.team().getNumber(), Naming.name(spare.failed()),
                spare.holder().getNumber(), Naming.name(spare.piece()), meeting.hour(), Naming.name(meeting.team()),
                Naming.name(meeting.holder()), (double) Math.round(meeting.apart().roadKm()), minutes(meeting.apart().total()),
                Naming.name(meeting.meet()), minutes(meeting.soonest()))));
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println();
            spares.forEach(spare -> say(spare.sentence()));
            if (spares.isEmpty()) {
                out().println(TEXTS.text("packCommand.nothingShared"));
            }
        }
        return StraddleCommand.DONE;
    }

    private static long minutes(Duration time) {
        return Math.round(time.toSeconds() / 60.0);
    }

    private int practice(List<Team> teams) throws Exception {
        List<Practice> passes = Practice.of(opened.event(), LocalDate.now(Outlook.zoneOf(opened.event())), new ConsoleProgress(err()));
        Table table = new Table(Table.column("team"), Table.column("operator"), Table.column("bird"), Table.column("aos"),
                Table.column("los"), Table.column("peakElevationDeg"));
        passes.stream().filter(each -> teams.contains(each.team())).forEach(each -> table.row(each.team().getNumber(),
                Naming.name(each.operator()), Naming.name(each.bird()), Rounded.second(each.pass().aos()), Rounded.second(each.pass().los()),
                (double) Math.round(each.pass().peakElevationDeg())));
        rows.print(table, out());
        if (rows.forPeople()) {
            List<String> homeless = teams.stream().flatMap(each -> Practice.homeless(each).stream()).map((Operator one) -> Naming.name(one))
                    .distinct().toList();
            if (!homeless.isEmpty()) {
                say(TEXTS.text("packCommand.homeless", "names", homeless));
            }
        }
        return StraddleCommand.DONE;
    }

    /** For each team a page to print as HTML and PDF, one for a phone, and plain text. */
    private int sheets(List<Team> teams) throws Exception {
        Outlook outlook = opened.outlookToWalk(err());
        Files.createDirectories(instead.out);
        for (Team each : teams) {
            PackingPage page = PackingPage.of(Packing.of(each, outlook), outlook);
            String name = PackingPage.fileName(each, opened.event());
            write(name + ".html", PackingSheet.html(page).getBytes(StandardCharsets.UTF_8));
            write(name + "-phone.html", PackingSheet.phone(page).getBytes(StandardCharsets.UTF_8));
            write(name + ".txt", PackingSheet.text(page).getBytes(StandardCharsets.UTF_8));
            write(name + ".pdf", PackingPdf.of(page, paper.format));
        }
        return StraddleCommand.DONE;
    }

    private void write(String name, byte[] content) throws Exception {
        out().println(Files.write(instead.out.resolve(name), content));
    }

    /** For programs, and to be read back: what people would find too wide too. */
    private static Table whole(List<Team> teams) {
        Table table = new Table(Stream.concat(Stream.of(Table.column("team")), Stream.of(KitColumn.values())
                .map(column -> Table.column(column.heading(), column.heading()))).toArray(Table.Column[]::new));
        for (Team team : teams) {
            for (PackingRow row : PackingList.of(team).rows()) {
                table.row(Stream.concat(Stream.of((Object) team.getNumber()), Arrays.stream(KitColumn.values())
                        .map(column -> column.value(row.item()))).toArray());
            }
        }
        return table;
    }

    private static Table table(Team team) {
        Table table = new Table(Table.column("team"), Table.column("item"),
                Table.column("count"), Table.column("role"), Table.column("modes"),
                Table.column("spareFor"), Table.column("weightKg"), Table.column("kit"),
                Table.column("packedBy"), Table.column("packedAt"));
        for (PackingRow row : PackingList.of(team).rows()) {
            table.row(team.getNumber(), row.name(), row.count(), row.role().getLiteral(), row.modesText(),
                    row.item().getSpareFor() == null ? null : row.item().getSpareFor().getName(),
                    row.item().getWeightKg(), row.kit(), row.packed().map(packed -> packed.by()).orElse(null),
                    row.packed().flatMap(packed -> packed.at()).orElse(null));
        }
        return table;
    }
}
