package org.straddle.ui.editors;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Base;
import org.straddle.model.DryRun;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.KitItem;
import org.straddle.model.Identified;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** Who goes together, with what, in which car, from when to when. */
public final class TeamEditor extends ThingEditor<Team> {

    private static final Catalogue TEXTS = Catalogue.of(TeamEditor.class);

    public TeamEditor() {
        super(Team.class);
    }

    @Override
    void fields(FieldForm form, Team team) {
        Event event = session().event();
        form.section(TEXTS.text("teamEditor.section.team"), "");
        form.text(TEXTS.text("teamEditor.number"), TEXTS.text("teamEditor.number.unit"), Numbers.whole(1, 99), team, Literals.TEAM__NUMBER);
        form.text(TEXTS.text("teamEditor.name"), "", Words.required(TEXTS.text("teamEditor.name.required")), team, Literals.TEAM__NAME);

        form.section(TEXTS.text("teamEditor.section.vehicle"), "");
        vehicle(form, team);

        form.section(TEXTS.text("teamEditor.section.operators"), "");
        form.members(TEXTS.text("teamEditor.operators.label"), event::getOperators, team, Literals.TEAM__OPERATORS);
        form.section(TEXTS.text("teamEditor.section.kits"), "");
        form.members(TEXTS.text("teamEditor.kits.label"), event::getKits, team, Literals.TEAM__KITS);

        form.wide(TEXTS.text("teamEditor.section.days"), TEXTS.text("teamEditor.section.days.description"));
        form.<TeamDay>table(team, Literals.TEAM__DAYS, () -> NextTeamDay.of(team, event), 4)
                .column(TEXTS.text("teamEditor.column.fromUtc"), 150, Literals.TEAM_DAY__FROM, Instants.in(event))
                .column(TEXTS.text("teamEditor.column.local"), 130, day -> local(day.getFrom(), event))
                .column(TEXTS.text("teamEditor.column.untilUtc"), 150, Literals.TEAM_DAY__UNTIL, Instants.in(event))
                .column(TEXTS.text("teamEditor.column.local"), 130, day -> local(day.getUntil(), event))
                .options(TEXTS.text("teamEditor.column.start"), 150, Literals.TEAM_DAY__START, () -> bases(event), TeamEditor::word)
                .options(TEXTS.text("teamEditor.column.end"), 150, Literals.TEAM_DAY__END, () -> bases(event), TeamEditor::word)
                .check(TEXTS.text("teamEditor.column.charged"), 130, Literals.TEAM_DAY__CHARGED)
                .column(TEXTS.text("teamEditor.column.charging"), 150, Literals.TEAM_DAY__CHARGING, Words.any())
                .column(TEXTS.text("teamEditor.column.checkIn"), 260, Literals.TEAM_DAY__CHECK_IN, Words.any());

        form.wide(TEXTS.text("teamEditor.section.dryRuns"), TEXTS.text("teamEditor.section.dryRuns.description"));
        form.<DryRun>table(team, Literals.TEAM__DRY_RUNS, Fresh::dryRun, 4)
                .column(TEXTS.text("teamEditor.column.at"), 150, Literals.DRY_RUN__AT, Instants.in(event))
                .column(TEXTS.text("teamEditor.column.by"), 120, Literals.DRY_RUN__BY, Words.any())
                .options(TEXTS.text("teamEditor.column.bird"), 150, Literals.DRY_RUN__BIRD, () -> orNone(event.getBirds()), TeamEditor::thing)
                .options(TEXTS.text("teamEditor.column.kit"), 130, Literals.DRY_RUN__KIT, () -> orNone(team.getKits()), TeamEditor::thing)
                .check(TEXTS.text("teamEditor.column.worked"), 110, Literals.DRY_RUN__WORKED)
                .optionsOf(TEXTS.text("teamEditor.column.failed"), 170, Literals.DRY_RUN__FAILED, run -> items(run, team), TeamEditor::thing)
                .column(TEXTS.text("teamEditor.column.note"), 200, Literals.DRY_RUN__NOTE, Words.any());
    }

    private void vehicle(FieldForm form, Team team) {
        form.text(TEXTS.text("teamEditor.label"), "", Words.any(),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__LABEL));
        form.text(TEXTS.text("teamEditor.seats"), TEXTS.text("teamEditor.seats.unit"), Numbers.wholeOrUnknown(1, 60),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__SEATS));
        form.text(TEXTS.text("teamEditor.range"), TEXTS.text("teamEditor.range.unit"), Numbers.orUnknown(0, 5000),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__RANGE_KM));
        form.text(TEXTS.text("teamEditor.load"), TEXTS.text("teamEditor.load.unit"), Numbers.orUnknown(0, 20_000),
                Slot.inside(session(), team, Literals.TEAM__VEHICLE, Literals.VEHICLE__LOAD_KG));
    }

    private static List<Base> bases(Event event) {
        return Stream.concat(Stream.of((Base) null), event.getBases().stream()).toList();
    }

    private static <T> List<T> orNone(List<T> things) {
        return Stream.concat(Stream.of((T) null), things.stream()).toList();
    }

    /** Of the kit that was used, else of all that the team takes along. */
    private static List<KitItem> items(DryRun run, Team team) {
        return orNone((run.getKit() != null ? Stream.of(run.getKit()) : team.getKits().stream())
                .flatMap(kit -> kit.getItems().stream()).toList());
    }

    private static String thing(Identified thing) {
        return thing == null ? "" : Naming.name(thing);
    }

    private static String word(Base base) {
        return base == null ? TEXTS.text("teamEditor.base.none") : Naming.name(base);
    }

    private static String local(Instant instant, Event event) {
        return instant == null ? "" : TEXTS.text("teamEditor.localTime",
                "day", TimeText.of(Outlook.zoneOf(event)).weekday(instant), "time", TimeText.of(Outlook.zoneOf(event)).clock(instant));
    }
}
