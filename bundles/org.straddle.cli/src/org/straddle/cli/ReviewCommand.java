package org.straddle.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeSet;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.safety.HazardNote;
import org.straddle.safety.SafetyNotes;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code review EVENT}: the hazards of each site and whether somebody put their name to it. */
@Command(name = "review", description = { "List the safety review of each site on the day it is used (or on the last day).",
    "With --site, print that site's hazards and what to do about them." })
final class ReviewCommand extends EventCommand {

    @Mixin
    private Rows rows;

    @Option(names = "--site", paramLabel = "NAME", description = "Print the safety notes of this site.")
    private String site;

    @Override
    int work() throws Exception {
        Event event = opened.event();
        if (site != null) {
            printNotes(event, OpenEvent.named(site, event.getSites(), Site::getName, "site"));
            return StraddleCommand.DONE;
        }
        Table table = new Table(Table.column("site", "Site"), Table.column("day", "Day"), Table.column("used", "Used"),
                Table.column("state", "Review"), Table.column("reviewer", "By"), Table.column("hazards", "Hazards"),
                Table.column("remark", "Remark"));
        for (Site each : event.getSites()) {
            TreeSet<LocalDate> uses = uses(event, each);
            SafetyNotes notes = SafetyNotes.of(each, day(event, uses), event.getPolicies());
            table.row(each.getName(), notes.day(), uses.isEmpty() ? "no" : "yes", notes.state().word(),
                    notes.review().map(review -> review.getReviewer()).orElse(null),
                    List.copyOf(notes.hazards().stream().map(hazard -> hazard.kindWords()).distinct().toList()),
                    String.join(" ", notes.remarks()));
        }
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(SafetyNotes.DEFERENCE);
        }
        return StraddleCommand.DONE;
    }

    private void printNotes(Event event, Site site) {
        SafetyNotes notes = SafetyNotes.of(site, day(event, uses(event, site)), event.getPolicies());
        if (!rows.forPeople()) {
            Table table = new Table(Table.column("site", "Site"), Table.column("day", "Day"),
                    Table.column("hazard", "Hazard"), Table.column("description", "Description"),
                    Table.column("measure", "Measure"), Table.column("cautions", "Cautions"));
            notes.hazards().forEach(hazard -> table.row(site.getName(), notes.day(), hazard.kindWords(),
                    hazard.description(), hazard.measureText(), hazard.cautions()));
            rows.print(table, out());
            return;
        }
        out().printf("%s on %s%n%s%n", site.getName(), notes.day(), notes.state().sentence());
        notes.remarks().forEach(remark -> out().println("! " + remark));
        for (HazardNote hazard : notes.hazards()) {
            out().printf("%n%s%n  To do: %s%n", hazard.title(), hazard.measureText());
            hazard.cautions().forEach(caution -> out().println("  - " + caution));
        }
        out().printf("%n%s%n", SafetyNotes.DEFERENCE);
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
