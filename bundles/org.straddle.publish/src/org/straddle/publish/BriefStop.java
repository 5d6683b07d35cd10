package org.straddle.publish;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Visit;
import org.straddle.outlook.BoundaryRule;
import org.straddle.outlook.Outlook;
import org.straddle.safety.HazardNote;
import org.straddle.safety.Light;
import org.straddle.safety.SafetyNotes;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * One stop of a brief.
 *
 * @param drive the way to it, when the place before it is known
 * @param kind what the station stands on, with the squares it claims
 * @param coordinates decimal degrees of the mark on WGS-84, with its error
 * @param readyAt when the station can work at the earliest
 * @param packUpBy last work, to leave in time
 * @param access how to get there, from the newest visit
 * @param review whether a review holds on the day, in a sentence
 * @param reviewHolds false: the sheet warns plainly
 * @param remarks what else wants attention
 * @param planB where to go when the site cannot be used
 * @param boundary how to stand on a line or corner, and what to bring home as proof
 */
public record BriefStop(String site, Optional<BriefDay.Drive> drive, String kind, String squares, String coordinates,
        Moment arrival, Moment readyAt, Moment packUpBy, Moment departure, List<BriefTurn> turns, String access,
        String review, boolean reviewHolds, List<Note> hazards, List<String> remarks, Optional<Boundary> boundary, String planB) {

    private static final Catalogue TEXTS = Catalogue.of(BriefStop.class);

    /** A hazard, what the visit says to do, and the usual cautions. */
    public record Note(String title, String measure, List<String> cautions) {
    }

    /** Where the parts of the station stand, and the proof to bring home. */
    public record Boundary(String where, List<String> evidence) {
    }

    static BriefStop of(Outlook outlook, Clock clock, LocalDate date, Stop stop, Optional<BriefDay.Drive> drive,
            PlanHold hold) {
        Site site = stop.getSite();
        SafetyNotes notes = SafetyNotes.of(outlook, site, clock.localDate(stop.getArrival()), light(outlook, stop));
        Instant ready = stop.getArrival().plus(outlook.policies().setUp());
        Instant packUp = stop.getDeparture().minus(outlook.policies().takeDown());
        return new BriefStop(Line.of(site.getName(), TEXTS.text("briefStop.unnamedSite")), drive, site.getKind().getLiteral(),
                outlook.squares(site).stream().map(Square::name).collect(Collectors.joining(" + ")),
                coordinates(outlook, site), clock.minute(stop.getArrival(), date), clock.minute(ready, date),
                clock.minute(packUp, date), clock.minute(stop.getDeparture(), date),
                Scheduled.turns(stop).stream().map(turn -> BriefTurn.of(outlook, clock, date, stop, turn, hold)).toList(),
                notes.visit().map(BriefStop::access).orElse(""), Line.of(notes.state().sentence()),
                notes.state().holds(), notes.hazards().stream().map(BriefStop::note).toList(),
                notes.remarks().stream().map(Line::of).toList(), BoundaryRule.of(outlook, site).map(BriefStop::boundary),
                hold.planB(stop));
    }

    private static Light light(Outlook outlook, Stop stop) {
        Site site = stop.getSite();
        return outlook.isPlaced(site) && stop.getArrival().isBefore(stop.getDeparture()) ? Light.during(Place.of(site.getLatitudeDeg(), site.getLongitudeDeg()),
                new Window(stop.getArrival(), stop.getDeparture())) : Light.UNKNOWN;
    }

    private static String coordinates(Outlook outlook, Site site) {
        // Five decimals are a metre: no mark is better.
        return outlook.isPlaced(site) ? TEXTS.text("briefStop.mark", "latitudeDeg", site.getLatitudeDeg(),
                "longitudeDeg", site.getLongitudeDeg(), "ceil", Math.ceil(site.getMarkErrorM()))
                : TEXTS.text("announcement.notKnown");
    }

    private static String access(Visit visit) {
        List<String> parts = new ArrayList<>();
        add(parts, TEXTS.text("briefStop.access"), visit.getAccess());
        add(parts, TEXTS.text("briefStop.allowed"), visit.getAllowedBy());
        add(parts, TEXTS.text("briefStop.parking"), visit.getParking());
        add(parts, TEXTS.text("briefStop.surface"), visit.getSurface());
        add(parts, TEXTS.text("briefStop.telephone"), visit.getPhoneCoverage());
        return String.join(". ", parts);
    }

    private static void add(List<String> parts, String label, String typed) {
        String line = Line.of(typed);
        if (!line.isEmpty()) {
            parts.add(label + line);
        }
    }

    private static Boundary boundary(BoundaryRule rule) {
        return new Boundary(Line.of(rule.where()), rule.evidence().stream().map(Line::of).toList());
    }

    private static Note note(HazardNote hazard) {
        return new Note(Line.of(hazard.title()), Line.of(hazard.measureText()),
                hazard.cautions().stream().map(Line::of).toList());
    }
}
