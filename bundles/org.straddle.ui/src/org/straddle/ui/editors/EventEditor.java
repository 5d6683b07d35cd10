package org.straddle.ui.editors;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Layer;
import org.straddle.model.LegTime;
import org.straddle.model.Region;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.outlook.things.ThingText;
import org.straddle.ui.fields.Allowances;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.SquareNames;
import org.straddle.ui.fields.Words;
import org.straddle.ui.fields.ZoneNames;
import org.straddle.ui.workbench.AddLayer;

/** The event's name and days, its demand, its announcement, and the figures that the coordinator chose. */
public final class EventEditor extends ThingEditor<Event> {

    public EventEditor() {
        super(Event.class);
    }

    @Override
    void fields(FieldForm form, Event event) {
        form.section("Event", "");
        form.text("Name", "", Words.required("Enter the event's name."), event, Literals.EVENT__NAME);
        form.text("Club", "", Words.any(), event, Literals.EVENT__CLUB);
        form.text("First day", "local date", new Dates(), event, Literals.EVENT__FIRST_DAY);
        form.text("Last day", "local date", new Dates(), event, Literals.EVENT__LAST_DAY);
        form.text("Time zone", "", new ZoneNames(event::getFirstDay, event::getLastDay), event, Literals.EVENT__ZONE);

        form.tall("Demand", "Share of chasers that still need a square.", 2);
        form.<Demand>table(event, Literals.EVENT__DEMANDS, "square", StraddleFactory.eINSTANCE::createDemand, 13)
                .column("Square", 110, Literals.DEMAND__SQUARE, SquareNames.one())
                .column("Still needed by, %", 140, Literals.DEMAND__SHARE_PERCENT, Numbers.between(0, 100));

        form.wide("Regions", "Where chasers live: the reach of a pass is judged by the share that it covers.");
        form.<Region>table(event, Literals.EVENT__REGIONS, "region", Fresh::region, 5)
                .column("Region", 150, Literals.REGION__NAME, Words.required("Enter the region's name."))
                .column("Chasers, %", 90, Literals.REGION__SHARE_PERCENT, Numbers.between(0, 100))
                .column("Squares", 150, Literals.REGION__SQUARES, new SquareNames())
                .column("Outline (WKT, longitude latitude)", 260, Literals.REGION__OUTLINE, Words.any());

        form.wide("Map layers", "Roads to scout, and what lies around them: power lines, buildings, railways, quarries, other roads. The line"
                + " scout looks through them; a map draws those that are visible, the last on top.");
        form.<Layer>table(event, Literals.EVENT__LAYERS, "layer", 4)
                .column("Title", 200, Literals.LAYER__TITLE, Words.any())
                .options("All of it is", 200, Literals.LAYER__ROLE, () -> roles(event), EventEditor::role)
                .check("Visible", 70, Literals.LAYER__VISIBLE)
                .check("Coordinates swapped", 185, Literals.LAYER__SWAPPED)
                .column("File in the folder layers", 220, Layer::getFile);
        form.button("Add a map layer…", "Read roads, power lines or other things from GPX or GeoJSON files",
                () -> AddLayer.ask(getSite().getShell()));

        form.section("Announcement", "Words for chasers that stand at the head of what is published.");
        form.lines("Text", 7, event, Literals.EVENT__ANNOUNCEMENT_TEXT);

        form.section("Driving", "");
        figure(form, event, "Road speed", "km/h", 1, 200, Literals.POLICIES__ROAD_SPEED_KMH);
        figure(form, event, "Detour factor", "× great circle", 1, 10, Literals.POLICIES__DETOUR_FACTOR);
        figure(form, event, "Driving limit", "minutes a day", 0, 1440, Literals.POLICIES__DRIVING_LIMIT_MINUTES);
        figure(form, event, "Break after", "minutes of driving", 1, 1440, Literals.POLICIES__BREAK_AFTER_MINUTES);
        figure(form, event, "Break", "minutes", 0, 1440, Literals.POLICIES__BREAK_MINUTES);

        form.wide("Drives that somebody knows", "Time and length of a drive between two places, in both directions; every"
                + " other drive is computed from the figures under Driving.");
        form.<LegTime>table(event, Literals.EVENT__LEG_TIMES, "drive", StraddleFactory.eINSTANCE::createLegTime, 4)
                .options("Between", 180, Literals.LEG_TIME__FROM, () -> ends(event), EventEditor::end)
                .options("And", 180, Literals.LEG_TIME__TO, () -> ends(event), EventEditor::end)
                .column("Minutes at the wheel", 180, Literals.LEG_TIME__MINUTES, Numbers.between(0, 1440))
                .column("Road, km", 90, Literals.LEG_TIME__ROAD_KM, Numbers.between(0, 5000))
                .column("Known from", 180, Literals.LEG_TIME__ORIGIN, Words.any());

        form.wide("Licences by place", "Where licence classes may use other bands, and where an uplink through a bird is"
                + " not allowed at all. What is written here is a reminder; the licence and local law decide.");
        form.<Jurisdiction>table(event, Literals.EVENT__JURISDICTIONS, "place", Fresh::jurisdiction, 4)
                .column("Place", 130, Literals.JURISDICTION__NAME, Words.required("Enter the place's name."))
                .column("Squares", 120, Literals.JURISDICTION__SQUARES, new SquareNames())
                .column("Outline (WKT, longitude latitude)", 270, Literals.JURISDICTION__OUTLINE, Words.any())
                .check("Uplink allowed", 140, Literals.JURISDICTION__UPLINK_ALLOWED)
                .column("Classes and bands", 220, Literals.JURISDICTION__ALLOWANCES, new Allowances());

        form.section("At a stop", "");
        figure(form, event, "Set-up", "minutes", 0, 1440, Literals.POLICIES__SET_UP_MINUTES);
        figure(form, event, "Take-down", "minutes", 0, 1440, Literals.POLICIES__TAKE_DOWN_MINUTES);
        figure(form, event, "Gap between turns", "minutes", 0, 1440, Literals.POLICIES__TURN_GAP_MINUTES);
        figure(form, event, "Shortest turn", "minutes", 0, 60, Literals.POLICIES__MINIMUM_TURN_MINUTES);
        figure(form, event, "Lowest peak", "° elevation", 0, 90, Literals.POLICIES__MINIMUM_PEAK_ELEVATION_DEG);
        figure(form, event, "Reached from", "° elevation at the chaser", 0, 90, Literals.POLICIES__REACH_ELEVATION_DEG);
        figure(form, event, "Energy to count on", "% of what is stored", 1, 100, Literals.POLICIES__USABLE_ENERGY_PERCENT);
        figure(form, event, "Coldest", "°C at the sites", -60, 60, Literals.POLICIES__COLDEST_DEG_C);
        form.check("An operator may work alone at a roadside",
                policy(event, Literals.POLICIES__LONE_OPERATOR_ALLOWED));

        form.section("Presence in squares", "");
        figure(form, event, "Least presence", "probability", 0, 1, Literals.POLICIES__LEAST_PRESENCE);
        figure(form, event, "Station span", "m across the line", 0, 1000, Literals.POLICIES__STATION_SPAN_M);
        form.text("Worth of repeats", "", Listed.of(Numbers.between(0, 1)),
                this.<List<Double>>policy(event, Literals.POLICIES__REPEAT_WORTHS))
                .example("shares of the demand, first pass first: 0.5, 0.25");

        form.section("How long things stay current", "");
        form.text("Surveys", "days", Numbers.whole(0, 10_000),
                policy(event, Literals.POLICIES__SURVEY_AGE_LIMIT_DAYS));
        form.text("Reviews", "days", Numbers.whole(0, 10_000),
                policy(event, Literals.POLICIES__REVIEW_VALIDITY_DAYS));
        figure(form, event, "Element sets", "days", 0, 365, Literals.POLICIES__ELEMENT_SET_AGE_LIMIT_DAYS);
    }

    private static List<Identified> ends(Event event) {
        return Stream.<Identified>concat(event.getBases().stream(), event.getSites().stream()).toList();
    }

    private static String end(Identified place) {
        return place == null ? "(choose)" : ThingText.of(place);
    }

    /** The usual roles, and those of one's own that the event has already. */
    private static List<String> roles(Event event) {
        return Stream.concat(LayerRole.USUAL.stream().map(LayerRole::word),
                event.getLayers().stream().map(Layer::getRole).filter(Objects::nonNull)).distinct().toList();
    }

    private static String role(String word) {
        return LayerRole.stored(word).label();
    }

    private void figure(FieldForm form, Event event, String name, String unit, double least, double most,
            EStructuralFeature feature) {
        Notation<Double> notation = Numbers.between(least, most);
        form.text(name, unit, notation, policy(event, feature));
    }

    private <T> Slot<T> policy(Event event, EStructuralFeature feature) {
        return Slot.inside(session(), event, Literals.EVENT__POLICIES, feature);
    }
}
