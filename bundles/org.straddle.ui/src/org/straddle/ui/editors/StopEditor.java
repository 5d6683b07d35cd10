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
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Megahertz;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** A team's stay at a site and the turns it works there. */
public final class StopEditor extends ThingEditor<Stop> {

    private static final Catalogue TEXTS = Catalogue.of(StopEditor.class);

    public StopEditor() {
        super(Stop.class);
    }

    @Override
    void fields(FieldForm form, Stop stop) {
        Event event = session().event();
        form.section(TEXTS.text("stopEditor.section.stop"), "");
        form.reference(TEXTS.text("stopEditor.team"), event::getTeams, stop, Literals.STOP__TEAM);
        form.reference(TEXTS.text("stopEditor.site"), event::getSites, stop, Literals.STOP__SITE);
        form.check(TEXTS.text("stopEditor.pinned"), stop, Literals.STOP__PINNED);

        form.section(TEXTS.text("stopEditor.section.times"), TEXTS.text("stopEditor.section.times.description"));
        form.text(TEXTS.text("stopEditor.arrival"), "", new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)), stop,
                Literals.STOP__ARRIVAL);
        form.text(TEXTS.text("stopEditor.departure"), "", new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)), stop,
                Literals.STOP__DEPARTURE);

        form.wide(TEXTS.text("stopEditor.section.turns"), TEXTS.text("stopEditor.section.turns.description"));
        form.<Turn>table(stop, Literals.STOP__TURNS, Fresh::turn, 7)
                .options(TEXTS.text("stopEditor.column.bird"), 170, Literals.TURN__BIRD, () -> birds(event), StopEditor::word)
                .column(TEXTS.text("stopEditor.column.startUtc"), 160, Literals.TURN__START,
                        new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)))
                .column(TEXTS.text("stopEditor.column.endUtc"), 160, Literals.TURN__END,
                        new Instants(() -> Outlook.zoneOf(event), () -> known(stop, event)))
                .column(TEXTS.text("stopEditor.column.localStart"), 130, turn -> turn.getStart() == null ? ""
                        : TEXTS.text("stopEditor.localStart",
                                "day", TimeText.of(Outlook.zoneOf(event)).weekday(turn.getStart()),
                                "time", TimeText.of(Outlook.zoneOf(event)).clock(turn.getStart())))
                .check(TEXTS.text("stopEditor.column.pinned"), 75, Literals.TURN__PINNED)
                .column(TEXTS.text("stopEditor.column.downlinkMHz"), 125, Literals.TURN__DOWNLINK_MHZ, new Megahertz())
                .column(TEXTS.text("stopEditor.column.note"), 240, Literals.TURN__NOTE, Words.any());
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
        return bird == null ? TEXTS.text("stopEditor.bird.none") : Naming.name(bird);
    }
}
