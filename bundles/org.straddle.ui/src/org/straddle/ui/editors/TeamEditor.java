package org.straddle.ui.editors;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.Words;

/** Who goes together, with what, in which car, from when to when. */
public final class TeamEditor extends ThingEditor<Team> {

    public TeamEditor() {
        super(Team.class);
    }

    @Override
    void fields(FieldForm form, Team team) {
        Event event = session().event();
        form.section("Team", "");
        form.text("Number", "on every sheet", Numbers.whole(1, 99), team, Literals.TEAM__NUMBER);
        form.text("Name", "", Words.required("Enter the team's name."), team, Literals.TEAM__NAME);

        form.section("Vehicle", "");
        vehicle(form, team);

        form.section("Operators", "");
        form.members("Who goes", event::getOperators, team, Literals.TEAM__OPERATORS);
        form.section("Kits", "");
        form.members("What goes along", event::getKits, team, Literals.TEAM__KITS);

        form.wide("Days", "From when to when the team is out on each day, and where it starts and ends. Times are"
                + " UTC; write an L behind a local time.");
        form.<TeamDay>table(team, Literals.TEAM__DAYS, "day", () -> NextTeamDay.of(team, event), 4)
                .column("From (UTC)", 150, Literals.TEAM_DAY__FROM, Instants.in(event))
                .column("Local", 130, day -> local(day.getFrom(), event))
                .column("Until (UTC)", 150, Literals.TEAM_DAY__UNTIL, Instants.in(event))
                .column("Local", 130, day -> local(day.getUntil(), event))
                .options("Start", 150, Literals.TEAM_DAY__START, () -> bases(event), TeamEditor::word)
                .options("End", 150, Literals.TEAM_DAY__END, () -> bases(event), TeamEditor::word);
    }

    private void vehicle(FieldForm form, Team team) {
        form.text("Label", "", Words.any(),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__LABEL));
        form.text("Seats", "with the driver's", Numbers.whole(1, 60),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__SEATS));
        form.text("Range", "km on one filling or charge", Numbers.between(0, 5000),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__RANGE_KM));
        form.text("Load", "kg besides people", Numbers.between(0, 20_000),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__LOAD_KG));
    }

    private static List<Base> bases(Event event) {
        return Stream.concat(Stream.of((Base) null), event.getBases().stream()).toList();
    }

    private static String word(Base base) {
        return base == null ? "(none)" : ThingText.of(base);
    }

    private static String local(Instant instant, Event event) {
        return instant == null ? "" : Times.local(instant, Outlook.zoneOf(event));
    }
}
