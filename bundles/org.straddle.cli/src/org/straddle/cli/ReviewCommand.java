package org.straddle.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.TreeMap;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.safety.HazardNote;
import org.straddle.safety.SafetyNotes;
import org.straddle.store.EventFolderException;

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

    private ZoneId zone;

    @Override
    int work() throws Exception {
        Event event = opened.event();
        if (site != null) {
            printNotes(OpenEvent.named(site, event.getSites(), Site::getName, "site"));
            return StraddleCommand.DONE;
        }
        Table table = new Table(Table.column("site", "Site"), Table.column("day", "Day"), Table.column("used", "Used"),
                Table.column("state", "Review"), Table.column("reviewer", "By"), Table.column("hazards", "Hazards"),
                Table.column("remark", "Remark"));
        for (Site each : event.getSites()) {
            SafetyNotes notes = SafetyNotes.of(each, day(each), event.getPolicies());
            table.row(each.getName(), notes.day(), uses(each).isEmpty() ? "no" : "yes", notes.state().word(),
                    notes.review().map(review -> review.getReviewer()).orElse(null),
                    List.copyOf(notes.hazards().stream().map(hazard -> hazard.kind().getLiteral()).distinct().toList()),
                    String.join(" ", notes.remarks()));
        }
        rows.print(table, out());
        if (rows.forPeople()) {
            out().println(SafetyNotes.DEFERENCE);
        }
        return StraddleCommand.DONE;
    }

    private void printNotes(Site site) throws EventFolderException {
        SafetyNotes notes = SafetyNotes.of(site, day(site), opened.event().getPolicies());
        if (!rows.forPeople()) {
            Table table = new Table(Table.column("site", "Site"), Table.column("day", "Day"),
                    Table.column("hazard", "Hazard"), Table.column("description", "Description"),
                    Table.column("measure", "Measure"), Table.column("cautions", "Cautions"));
            notes.hazards().forEach(hazard -> table.row(site.getName(), notes.day(), hazard.kind().getLiteral(),
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
    private LocalDate day(Site site) throws EventFolderException {
        TreeMap<LocalDate, Stop> days = uses(site);
        if (!days.isEmpty()) {
            return days.lastKey();
        }
        Event event = opened.event();
        return event.getLastDay() != null ? event.getLastDay() : LocalDate.now(java.time.ZoneOffset.UTC);
    }

    private ZoneId zone() throws EventFolderException {
        if (zone == null) {
            zone = opened.outlook(err()).zone();
        }
        return zone;
    }

    private TreeMap<LocalDate, Stop> uses(Site site) throws EventFolderException {
        TreeMap<LocalDate, Stop> days = new TreeMap<>();
        if (opened.event().getPlan() != null) {
            for (Stop stop : opened.event().getPlan().getStops()) {
                if (stop.getSite() == site && stop.getDeparture() != null) {
                    days.put(stop.getDeparture().atZone(zone()).toLocalDate(), stop);
                }
            }
        }
        return days;
    }
}
