package org.straddle.publish.site;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.Gates;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Locator;
import org.straddle.grid.PositionText;
import org.straddle.grid.Square;
import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Event;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.BoundaryRule;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.StationPart;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.CheckIns;
import org.straddle.safety.HazardNote;
import org.straddle.safety.Light;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.explain.Figure;
import org.straddle.safety.explain.SiteFigures;
import org.straddle.sky.Place;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Makes the pages of an event. */
public final class SiteSheets {

    private static final Catalogue TEXTS = Catalogue.of(SiteSheets.class);

    private final Outlook outlook;
    private final Event event;
    private final Gates gates;
    private final TimeText times;
    private final Set<String> taken = new HashSet<>();

    private SiteSheets(Outlook outlook, List<Finding> findings) {
        this.outlook = outlook;
        this.event = outlook.event();
        this.gates = Gates.of(outlook, findings);
        this.times = TimeText.of(outlook.zone());
    }

    /**
     * @param findings what the checks said of the same outlook
     * @param only for stops at this site; null for all
     */
    public static List<SiteSheet> of(Outlook outlook, List<Finding> findings, Site only) {
        SiteSheets sheets = new SiteSheets(outlook, findings);
        return Itinerary.of(outlook.event()).stays().stream().filter(stay -> only == null || stay.site() == only).map(sheets::sheet)
                .toList();
    }

    private SiteSheet sheet(Stay stay) {
        LocalDate day = times.date(stay.window().start());
        SafetyNotes notes = SafetyNotes.of(outlook, stay.site(), day, light(stay));
        Optional<BoundaryRule> rule = BoundaryRule.of(outlook, stay.site());
        List<SiteSheet.Part> parts = new ArrayList<>();
        add(parts, "where", where(stay.site(), notes));
        add(parts, "when", when(stay));
        add(parts, "call", call(stay, notes));
        add(parts, "check-in", checkIn(stay));
        add(parts, "hazards", hazards(notes));
        add(parts, "figures", figures(stay, day));
        add(parts, "rules", outlook.jurisdictions(stay.site()).stream().map(Jurisdiction::getLocalRules).map(SiteSheets::line)
                .filter(text -> !text.isEmpty()).toList());
        rule.ifPresent(boundary -> add(parts, "proof", Stream.concat(Stream.concat(Stream.of(boundary.where()),
                boundary.evidence().stream()), Stream.of(TEXTS.text("proof.note"))).toList()));
        add(parts, "people", stay.team().getOperators().stream().map(SiteSheets::person).toList());
        add(parts, "signed", List.of(TEXTS.text("signed.one"), TEXTS.text("signed.two")));
        return new SiteSheet(file(stay, day), TEXTS.text("title", "team", Naming.name(stay.team()), "site", Naming.name(stay.site()), "day",
                day), held(stay), parts, rule.map(BoundaryRule::parts).orElse(List.<StationPart>of()), SafetyNotes.DEFERENCE);
    }

    private static void add(List<SiteSheet.Part> parts, String key, List<String> lines) {
        if (!lines.isEmpty()) {
            parts.add(new SiteSheet.Part(TEXTS.text("heading." + key), lines));
        }
    }

    private String file(Stay stay, LocalDate day) {
        String site = Naming.name(stay.site()).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String name = "team-" + stay.team().getNumber() + "-" + day + "-" + (site.isEmpty() ? "site" : site);
        String free = name;
        for (int again = 2; !taken.add(free); again++) {
            free = name + "-" + again;
        }
        return free;
    }

    /** Whether the gate of the day on which the team set out is shut, with the items in a line. */
    private String held(Stay stay) {
        LocalDate out = times.date(Drives.dayOf(stay).map(TeamDay::getFrom).orElse(stay.window().start()));
        return gates.of(stay.team()).stream().filter(gate -> gate.day().equals(out)).filter(DepartureGate::isShut).findFirst()
                .map(gate -> TEXTS.text("held", "items", gate.open().stream().map(GateItem::name).collect(Collectors.joining(", "))))
                .orElse("");
    }

    private Light light(Stay stay) {
        return outlook.isPlaced(stay.site()) ? Light.during(Place.of(stay.site().getLatitudeDeg(), stay.site().getLongitudeDeg()),
                stay.window()) : Light.UNKNOWN;
    }

    private List<String> where(Site site, SafetyNotes notes) {
        List<String> lines = new ArrayList<>();
        if (outlook.isPlaced(site)) {
            GeoPosition mark = outlook.position(site);
            lines.add(TEXTS.text("where.position", "degrees", PositionText.write(mark, PositionText.Form.DEGREES), "minutes",
                    PositionText.write(mark, PositionText.Form.MINUTES), "locator", Locator.of(mark, 10).toString(), "squares",
                    outlook.squares(site).stream().map(Square::name).collect(Collectors.joining(" + "))));
        }
        notes.visit().ifPresent(visit -> {
            told(lines, "where.directions", visit.getDirections());
            told(lines, "where.access", visit.getAccess());
            told(lines, "where.allowed", visit.getAllowedBy());
            told(lines, "where.parking", visit.getParking());
        });
        return lines;
    }

    private static void told(List<String> lines, String key, String typed) {
        if (!line(typed).isEmpty()) {
            lines.add(TEXTS.text("told." + key, "text", line(typed)));
        }
    }

    private List<String> when(Stay stay) {
        return List.of(TEXTS.text("when.stay", "arrive", times.at(stay.window().start()), "ready",
                times.at(stay.window().start().plus(outlook.policies().setUp())), "leave", times.at(stay.window().end())));
    }

    private List<String> call(Stay stay, SafetyNotes notes) {
        List<String> lines = new ArrayList<>();
        List<String> numbers = Stream.concat(outlook.jurisdictions(stay.site()).stream().map(Jurisdiction::getEmergencyNumber),
                event.getContacts().stream().filter(contact -> contact.getRole() == ContactRole.EMERGENCY).map(Contact::getReach))
                .map(SiteSheets::line).filter(number -> !number.isEmpty()).distinct().toList();
        lines.add(numbers.isEmpty() ? TEXTS.text("call.noNumber") : TEXTS.text("call.emergency", "numbers", String.join(", ", numbers)));
        event.getContacts().stream().filter(contact -> contact.getRole() != ContactRole.EMERGENCY)
                .map(contact -> TEXTS.text("call.contact", "role", Naming.of(contact.getRole()), "name", line(contact.getName()), "reach",
                        line(contact.getReach()))).forEach(lines::add);
        Optional<Visit> visit = notes.visit();
        told(lines, "call.hospital", visit.map(Visit::getNearestHospital).orElse(""));
        told(lines, "call.help", visit.map(Visit::getNearestHelp).orElse(""));
        told(lines, "call.meeting", visit.map(Visit::getMeetingPoint).orElse(""));
        told(lines, "call.coverage", visit.map(Visit::getPhoneCoverage).orElse(""));
        return lines;
    }

    private List<String> checkIn(Stay stay) {
        CheckIns calls = CheckIns.of(stay.window(), outlook.event().getPolicies() != null ? outlook.event().getPolicies()
                : StraddleFactory.eINSTANCE.createPolicies());
        String with = Drives.dayOf(stay).map(TeamDay::getCheckIn).map(SiteSheets::line).orElse("");
        Instant first = calls.times().get(0);
        return List.of(with.isEmpty() ? TEXTS.text("check.nobody") : TEXTS.text("check.with", "with", with),
                TEXTS.text("check.times", "times", calls.times().stream().map(times::clock).collect(Collectors.joining(" ____  ")), "date",
                        times.date(first)),
                TEXTS.text("check.missed", "minutes", calls.grace().toMinutes(), "at", times.clock(first), "act",
                        times.clock(calls.actAt(first))));
    }

    private static List<String> hazards(SafetyNotes notes) {
        List<String> lines = new ArrayList<>();
        lines.add(notes.state().sentence());
        lines.addAll(notes.remarks());
        for (HazardNote hazard : notes.hazards()) {
            lines.add(TEXTS.text("hazard", "title", line(hazard.title()), "measure", line(hazard.measureText())));
            hazard.cautions().forEach(caution -> lines.add(TEXTS.text("caution", "caution", caution)));
        }
        return lines;
    }

    /** Those that the notes do not say already. */
    private List<String> figures(Stay stay, LocalDate day) {
        return SiteFigures.of(outlook, stay.site(), List.of(stay), day).stream().filter(Figure::known).filter(Figure::ofTheDay)
                .map(figure -> TEXTS.text("figure", "what", figure.what(), "sentence", figure.sentence())).toList();
    }

    private static String person(Operator operator) {
        String medical = operator.isMedicalConsent() ? line(operator.getMedicalNote()) : "";
        return TEXTS.text("person", "name", Naming.name(operator), "phone", line(operator.getPhone()), "kin",
                line(operator.getEmergencyContact()), "medical", medical);
    }

    private static String line(String typed) {
        return typed == null ? "" : typed.replaceAll("[\\p{Cntrl}\\p{Cs}\\uFFFE\\uFFFF\\s]+", " ").strip();
    }
}
