package org.straddle.ui.editors;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Words;

/** A team's stay at a site and the turns it works there. */
public final class StopEditor extends ThingEditor<Stop> {

    public StopEditor() {
        super(Stop.class);
    }

    @Override
    void fields(FieldForm form, Stop stop) {
        Event event = session().event();
        form.section("Stop", "");
        form.reference("Team", event::getTeams, stop, Literals.STOP__TEAM);
        form.reference("Site", event::getSites, stop, Literals.STOP__SITE);
        form.check("Pinned: no planner may move it", stop, Literals.STOP__PINNED);

        form.section("Times", "UTC; a time alone keeps the day, an L behind it means local time.");
        form.text("Arrival", "", new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)), stop,
                Literals.STOP__ARRIVAL);
        form.text("Departure", "", new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)), stop,
                Literals.STOP__DEPARTURE);

        form.wide("Turns", "Passes, or parts of them, that the team works here.");
        form.<Turn>table(stop, Literals.STOP__TURNS, "turn", Fresh::turn, 7)
                .options("Bird", 170, Literals.TURN__BIRD, () -> birds(event), StopEditor::word)
                .column("Start (UTC)", 160, Literals.TURN__START,
                        new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)))
                .column("End (UTC)", 160, Literals.TURN__END,
                        new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)))
                .column("Local start", 130, turn -> turn.getStart() == null ? ""
                        : Times.local(turn.getStart(), Outlook.zoneOf(event)))
                .check("Pinned", 75, Literals.TURN__PINNED)
                .column("Downlink, MHz", 125, Literals.TURN__DOWNLINK_MHZ, Numbers.between(0, 300_000))
                .column("Note", 240, Literals.TURN__NOTE, Words.any());
    }

    /** The day that a time without a day belongs to. */
    private static Instant known(Stop stop, Event event) {
        return Stream.of(stop.getArrival(), stop.getDeparture()).filter(instant -> instant != null).findFirst()
                .orElseGet(() -> event.getFirstDay() == null ? null
                        : event.getFirstDay().atTime(12, 0).atZone(Outlook.zoneOf(event)).toInstant());
    }

    private static List<Bird> birds(Event event) {
        return Stream.concat(Stream.of((Bird) null), event.getBirds().stream()).toList();
    }

    private static String word(Bird bird) {
        return bird == null ? "(none)" : ThingText.of(bird);
    }
}
