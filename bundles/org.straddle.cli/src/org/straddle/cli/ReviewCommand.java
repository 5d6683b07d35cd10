package org.straddle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

import org.eclipse.emf.edit.command.SetCommand;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateEntry;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
import org.straddle.exchange.maps.LayerSource;
import org.straddle.exchange.maps.WiresOnMaps;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.BoundaryRule;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.publish.site.QuestionSheet;
import org.straddle.publish.site.SiteSheet;
import org.straddle.publish.site.SiteSheetHtml;
import org.straddle.publish.site.SiteSheetPdf;
import org.straddle.publish.site.SiteSheets;
import org.straddle.safety.HazardNote;
import org.straddle.safety.Light;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.SecondSignature;
import org.straddle.safety.explain.Figure;
import org.straddle.safety.explain.SiteFigures;
import org.straddle.safety.guided.GuidedReview;
import org.straddle.safety.guided.HazardProposal;
import org.straddle.safety.guided.HazardProposals;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code review EVENT}: the hazards of each site, whether somebody put their name to it, and whether teams may leave. */
@Command(name = "review")
final class ReviewCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(ReviewCommand.class);

    @Mixin
    private Rows rows;

    @Option(names = "--site", paramLabel = "NAME")
    private String site;

    @Option(names = "--explain")
    private boolean explain;

    @Option(names = "--second", paramLabel = "NAME")
    private String second;

    @Mixin
    private SettleOptions settle;

    @Option(names = "--sheet")
    private boolean sheet;

    @Option(names = "--questions")
    private boolean questions;

    @Option(names = "--out", paramLabel = "DIR")
    private Path target;

    @Override
    int work() throws Exception {
        Event event = settle.isGiven() || second != null ? null : opened.event();
        if (second != null) {
            event = signToo();
        }
        if (settle.isGiven()) {
            GateEntry entry = settle.entry();
            EventFolder folder = opened.toChange();
            Edit.execute(domain -> entry.on(domain, settle.day(folder.event())));
            folder.save();
            event = folder.event();
        }
        if ((sheet || questions) != (target != null) || sheet && questions) {
            throw new WrongInput(TEXTS.text("reviewCommand.sheet.out"));
        }
        if (questions) {
            return writeQuestions();
        }
        if (sheet) {
            writeSheets();
            return StraddleCommand.DONE;
        }
        if (explain && site == null) {
            throw new WrongInput(TEXTS.text("reviewCommand.explain.site"));
        }
        if (site != null) {
            Site chosen = OpenEvent.site(site, event);
            if (explain) {
                explain(chosen);
            } else {
                printNotes(event, chosen);
            }
            return StraddleCommand.DONE;
        }
        Table table = new Table(Table.column("site"), Table.column("day"), Table.column("used"),
                Table.column("state"), Table.column("reviewer"), Table.column("hazards"),
                Table.column("remark"));
        Outlook outlook = opened.outlook(err());
        for (Site each : event.getSites()) {
            TreeSet<LocalDate> uses = uses(event, each);
            SafetyNotes notes = SafetyNotes.of(outlook, each, day(event, uses), Light.UNKNOWN);
            table.row(each.getName(), notes.day(), uses.isEmpty() ? "no" : "yes", notes.state().word(),
                    notes.review().map(review -> review.getReviewer()).orElse(null),
                    List.copyOf(notes.hazards().stream().map(hazard -> hazard.kindWords()).distinct().toList()),
                    String.join(" ", rows.forPeople() ? notes.shortRemarks() : notes.remarks()));
        }
        rows.print(table, out());
        Gates gates = Gates.of(outlook, Checks.standard().run(outlook, new ConsoleProgress(err())));
        if (rows.forPeople()) {
            out().println(TEXTS.text("reviewCommand.cautions"));
            gates.all().forEach(this::print);
            out().println();
            out().println(gates.summary());
            out().println(SafetyNotes.DEFERENCE);
        }
        return gates.anyShut() ? StraddleCommand.BLOCKED : StraddleCommand.DONE;
    }

    /** Puts a second name under the review of the site and saves it. */
    private Event signToo() throws Exception {
        if (site == null) {
            throw new WrongInput(TEXTS.text("reviewCommand.second.site"));
        }
        EventFolder folder = opened.toChange();
        Site chosen = OpenEvent.site(site, folder.event());
        Review review = SecondSignature.awaited(chosen, day(folder.event(), uses(folder.event(), chosen)), folder.event().getPolicies())
                .orElseThrow(() -> new WrongInput(TEXTS.text("reviewCommand.second.none", "site", Naming.name(chosen))));
        SecondSignature signature = new SecondSignature(second, Instant.now().truncatedTo(ChronoUnit.MINUTES));
        signature.problem(chosen, review).ifPresent(problem -> {
            throw new WrongInput(problem);
        });
        Edit.execute(domain -> SetCommand.create(domain, review, StraddlePackage.Literals.REVIEW__SECOND, signature.name().strip()));
        Edit.execute(domain -> SetCommand.create(domain, review, StraddlePackage.Literals.REVIEW__SECOND_AT, signature.at()));
        folder.save();
        return folder.event();
    }

    /** A page for each stop, as HTML and as PDF on both papers. */
    private void writeSheets() throws Exception {
        Outlook outlook = opened.outlook(err());
        Site only = site == null ? null : OpenEvent.site(site, outlook.event());
        List<SiteSheet> sheets = SiteSheets.of(outlook, Checks.standard().run(outlook, new ConsoleProgress(err())), only);
        write(sheets);
        if (sheets.isEmpty()) {
            out().println(TEXTS.text("reviewCommand.sheet.none"));
        }
    }

    /** The questions of a review of the site, with what facts propose, for somebody with a pencil. */
    private int writeQuestions() throws Exception {
        if (site == null) {
            throw new WrongInput(TEXTS.text("reviewCommand.questions.site"));
        }
        Outlook outlook = opened.outlook(err());
        Site chosen = OpenEvent.site(site, outlook.event());
        LocalDate day = day(outlook.event(), uses(outlook.event(), chosen));
        OptionalDouble wires = outlook.isPlaced(chosen) ? WiresOnMaps.nearestM(LayerSource.of(opened.folder()), outlook.position(chosen),
                new ConsoleProgress(err())) : OptionalDouble.empty();
        List<HazardProposal> proposed = HazardProposals.of(outlook, chosen, Itinerary.of(outlook.event()).at(chosen), day, wires);
        write(List.of(QuestionSheet.of(GuidedReview.begin(chosen, day, outlook.event().getPolicies(), proposed))));
        return StraddleCommand.DONE;
    }

    private void write(List<SiteSheet> pages) throws IOException {
        Files.createDirectories(target);
        for (SiteSheet page : pages) {
            write(target.resolve(page.file() + ".html"), SiteSheetHtml.of(page).getBytes(StandardCharsets.UTF_8));
            write(target.resolve(page.file() + "-a4.pdf"), SiteSheetPdf.of(page, SiteSheetPdf.Format.A4));
            write(target.resolve(page.file() + "-letter.pdf"), SiteSheetPdf.of(page, SiteSheetPdf.Format.LETTER));
        }
    }

    private void write(Path file, byte[] bytes) throws IOException {
        Files.write(file, bytes);
        out().println(file);
    }

    private void print(DepartureGate gate) {
        out().println();
        out().println(gate.sentence());
        gate.items().stream().filter(item -> item.state() != GateItem.State.SETTLED)
                .forEach(item -> out().println("  - " + item.line()));
    }

    private void explain(Site chosen) throws Exception {
        Outlook outlook = opened.outlook(err());
        Table table = new Table(Table.column("what"), Table.column("known"), Table.column("sentence"), Table.column("source"));
        List<Figure> figures = SiteFigures.of(outlook, chosen, Itinerary.of(outlook.event()).at(chosen),
                day(outlook.event(), uses(outlook.event(), chosen)));
        figures.forEach(figure -> table.row(figure.what(), figure.known() ? "yes" : "no", figure.sentence(), figure.source()));
        if (!rows.forPeople()) {
            rows.print(table, out());
            return;
        }
        figures.forEach(figure -> out().println(TEXTS.text("reviewCommand.figure", "what", figure.what(), "sentence", figure.sentence(),
                "source", figure.source())));
        out().println(TEXTS.text("reviewCommand.text", "deference", SafetyNotes.DEFERENCE));
    }

    private void printNotes(Event event, Site site) throws Exception {
        SafetyNotes notes = SafetyNotes.of(opened.outlook(err()), site, day(event, uses(event, site)), Light.UNKNOWN);
        if (!rows.forPeople()) {
            Table table = new Table(Table.column("site"), Table.column("day"),
                    Table.column("hazard"), Table.column("description"),
                    Table.column("measure"), Table.column("cautions"));
            notes.hazards().forEach(hazard -> table.row(site.getName(), notes.day(), hazard.kindWords(),
                    hazard.description(), hazard.measureText(), hazard.cautions()));
            rows.print(table, out());
            return;
        }
        out().println(TEXTS.text("reviewCommand.on", "site", InertText.line(site.getName()), "day", notes.day(),
                "state", notes.state().sentence()));
        notes.remarks().forEach(remark -> out().println("! " + remark));
        for (HazardNote hazard : notes.hazards()) {
            out().println(TEXTS.text("reviewCommand.do", "hazard", hazard.title(), "measureText", hazard.measureText()));
            hazard.cautions().forEach(caution -> out().println("  - " + caution));
        }
        BoundaryRule.of(opened.outlook(err()), site).ifPresent(rule -> {
            out().println(TEXTS.text("reviewCommand.proof", "where", rule.where()));
            rule.evidence().forEach(proof -> out().println("  - " + proof));
        });
        out().println(TEXTS.text("reviewCommand.text", "deference", SafetyNotes.DEFERENCE));
    }

    /** The last local day on which a team stops there, else the last day of the event: a review must hold until then. */
    private static LocalDate day(Event event, TreeSet<LocalDate> uses) {
        if (!uses.isEmpty()) {
            return uses.last();
        }
        return event.getLastDay() != null ? event.getLastDay() : LocalDate.now(ZoneOffset.UTC);
    }

    /** Local days on which a team leaves the site. */
    private static TreeSet<LocalDate> uses(Event event, Site site) {
        TreeSet<LocalDate> days = new TreeSet<>();
        if (event.getPlan() != null) {
            for (Stop stop : event.getPlan().getStops()) {
                if (stop.getSite() == site && stop.getDeparture() != null) {
                    days.add(stop.getDeparture().atZone(Outlook.zoneOf(event)).toLocalDate());
                }
            }
        }
        return days;
    }
}
