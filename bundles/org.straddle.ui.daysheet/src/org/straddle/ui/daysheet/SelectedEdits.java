package org.straddle.ui.daysheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Shell;
import org.straddle.daysheet.edit.AddTurn;
import org.straddle.daysheet.edit.Pin;
import org.straddle.daysheet.edit.Remove;
import org.straddle.daysheet.edit.SplitStop;
import org.straddle.daysheet.edit.SplitTurn;
import org.straddle.daysheet.fits.Carried;
import org.straddle.daysheet.fits.FittingPlace;
import org.straddle.daysheet.fits.Grip;
import org.straddle.daysheet.fits.Landing;
import org.straddle.daysheet.fits.Openings;
import org.straddle.daysheet.sheet.PlacedStop;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** What keys and menus do to the stop or turn that is selected. */
final class SelectedEdits {

    private static final Catalogue TEXTS = Catalogue.of(SelectedEdits.class);

    private final SheetCanvas sheet;
    private final PlanEdits edits;

    SelectedEdits(SheetCanvas sheet, PlanEdits edits) {
        this.sheet = sheet;
        this.edits = edits;
    }

    void move(Duration by) {
        carried(Grip.WHOLE, (item, carried) -> edits.run(carried.land(team(item), item.window().start().plus(by))));
    }

    void stretch(Grip end, Duration by) {
        carried(end, (item, carried) -> edits.run(carried.land(team(item),
                (end == Grip.START ? item.window().start() : item.window().end()).plus(by))));
    }

    /** To the nearest place where it fits, after the present one, or before it. */
    void toFitting(boolean later) {
        carried(Grip.WHOLE, (item, carried) -> {
            Instant now = item.window().start();
            List<FittingPlace> places = carried.places(team(item));
            Stream<Instant> starts = places.stream().map(FittingPlace::range)
                    .flatMap(range -> Stream.of(range.first(), range.last()));
            Optional<Instant> next = starts.filter(start -> later ? start.isAfter(now) : start.isBefore(now))
                    .min(Comparator.comparing((Instant start) -> Duration.between(start, now).abs()));
            next.ifPresentOrElse(start -> edits.run(carried.land(team(item), start, places, Duration.ofSeconds(1))),
                    () -> sheet.say(TEXTS.text("selectedEdits.teamHasPlace", "team", Naming.name(team(item)),
                            "later", later), true));
        });
    }

    /** At an instant within it, else at its middle or as near to that as no turn is cut. */
    void split(Optional<Instant> at) {
        selected(item -> {
            Instant wanted = at.filter(item.window()::contains).orElse(middle(item.window()));
            edits.run(item instanceof PlacedStop stop ? new SplitStop(item.id(), at.isPresent() ? wanted
                    : between(stop, wanted)) : new SplitTurn(item.id(), wanted));
        });
    }

    /** To the next team that could take it, or to the one before. */
    void handOver(int step) {
        carried(Grip.WHOLE, (item, carried) -> {
            List<Team> teams = others(item, step);
            if (item.thing() instanceof Stop) {
                teams.stream().findFirst().ifPresentOrElse(
                        team -> edits.run(carried.land(team, item.window().start())),
                        () -> sheet.say(TEXTS.text("selectedEdits.noOther"), true));
                return;
            }
            Optional<Landing> landing = teams.stream().flatMap(team -> then(item, carried, team).stream()).findFirst();
            landing.ifPresentOrElse(edits::run, () -> sheet.say(TEXTS.text("selectedEdits.teamHasStop",
                    "bird", Naming.name(((Turn) item.thing()).getBird())), true));
        });
    }

    void pin() {
        selected(item -> edits.run(new Pin(item.id(), !isPinned(item.thing()))));
    }

    void ban(Shell shell) {
        selected(item -> new BanDialog(shell, item).ask().ifPresent(edits::run));
    }

    void delete() {
        selected(item -> edits.run(new Remove(item.id())));
    }

    /**
     * From a list of the sites that a team can stop at.
     *
     * @param pointed the team to begin with; if empty, that of what is selected
     * @param at      when; if empty, after what is selected
     */
    void addStop(Shell shell, Optional<Team> pointed, Optional<Instant> at) {
        sheet.whenUpToDate(() -> {
            Outlook outlook = sheet.outlook().orElseThrow();
            List<Team> teams = new ArrayList<>(outlook.event().getTeams());
            teams.sort(Comparator.comparingInt(Team::getNumber));
            if (teams.isEmpty()) {
                sheet.say(TEXTS.text("selectedEdits.noTeam"), true);
                return;
            }
            Optional<SheetItem> selected = sheet.selected();
            Optional<String> wanted = pointed.or(() -> selected.map(SelectedEdits::team)).map(Team::getId);
            Team first = teams.stream().filter(team -> wanted.filter(team.getId()::equals).isPresent()).findFirst()
                    .orElse(teams.get(0));
            new StopDialog(shell, outlook, teams, first, at.or(() -> selected.map(item -> item.window().end()))).ask()
                    .ifPresent(add -> {
                        sheet.chooseLater(add.stopId());
                        edits.run(add);
                    });
        });
    }

    /** From a list of the passes that can be worked in the stop that is selected, or in that of the turn. */
    void addTurn(Shell shell) {
        selected(item -> {
            Outlook outlook = sheet.outlook().orElseThrow();
            Stop stop = item.thing() instanceof Stop chosen ? chosen : (Stop) item.thing().eContainer();
            List<Openings.Opening> openings = Openings.of(outlook, stop);
            if (openings.isEmpty()) {
                sheet.say(TEXTS.text("selectedEdits.passCanWorked", "stop", Naming.name(stop)), true);
                return;
            }
            new OpeningDialog(shell, outlook, stop, openings).ask().ifPresent(opening -> {
                AddTurn add = AddTurn.of(stop.getId(), opening.pass().bird().getId(), opening.window());
                sheet.chooseLater(add.turnId());
                edits.run(add);
            });
        });
    }

    /** A deed that needs to know where the thing may go. */
    private interface Deed {
        void to(SheetItem item, Carried carried);
    }

    private void carried(Grip grip, Deed deed) {
        selected(item -> {
            if (team(item) == null) {
                sheet.say(TEXTS.text("selectedEdits.hasTeamOpen", "thing", Naming.name(item.thing())), true);
                return;
            }
            sheet.carried(item, grip).ifPresentOrElse(carried -> deed.to(item, carried), () -> sheet.say(
                    TEXTS.text("selectedEdits.lacksSiteBird", "thing", Naming.name(item.thing())), true));
        });
    }

    private void selected(Consumer<SheetItem> deed) {
        sheet.whenUpToDate(() -> sheet.selected().ifPresentOrElse(deed,
                () -> sheet.say(TEXTS.text("selectedEdits.nothingSelectedChoose"), true)));
    }

    private static Team team(SheetItem item) {
        return (item.thing() instanceof Stop stop ? stop : (Stop) item.thing().eContainer()).getTeam();
    }

    private List<Team> others(SheetItem item, int step) {
        List<Team> all = new ArrayList<>(sheet.outlook().orElseThrow().event().getTeams());
        all.sort(Comparator.comparingInt(Team::getNumber));
        int own = all.indexOf(team(item));
        List<Team> others = new ArrayList<>();
        for (int i = 1; i < all.size(); i++) {
            others.add(all.get(Math.floorMod(own + i * step, all.size())));
        }
        return others;
    }

    /** In a place of the team where it fits and that shares time with it, as near to its own time as that can be. */
    private static Optional<Landing> then(SheetItem item, Carried carried, Team team) {
        List<FittingPlace> places = carried.places(team);
        return places.stream().filter(place -> place.window().overlaps(item.window()))
                .max(Comparator.comparing((FittingPlace place) -> place.window().intersection(item.window()).orElseThrow()
                        .duration()))
                .map(place -> carried.land(team, held(place, item.window().start()), places, Duration.ofSeconds(1)));
    }

    private static Instant held(FittingPlace place, Instant start) {
        return start.isBefore(place.range().first()) ? place.range().first()
                : start.isAfter(place.range().last()) ? place.range().last() : start;
    }

    private static Instant between(PlacedStop stop, Instant wanted) {
        Stream<Instant> ends = stop.turns().stream().flatMap(turn -> Stream.of(turn.window().start(),
                turn.window().end()));
        return Stream.concat(Stream.of(wanted), ends)
                .filter(at -> stop.window().start().isBefore(at) && at.isBefore(stop.window().end()))
                .filter(at -> stop.turns().stream().noneMatch(turn -> turn.window().start().isBefore(at)
                        && at.isBefore(turn.window().end())))
                .min(Comparator.comparing((Instant at) -> Duration.between(at, wanted).abs())).orElse(wanted);
    }

    private static Instant middle(Window window) {
        Instant middle = window.start().plus(window.duration().dividedBy(2));
        return middle.minusNanos(middle.getNano());
    }

    private static boolean isPinned(Identified thing) {
        return thing instanceof Stop stop ? stop.isPinned() : ((Turn) thing).isPinned();
    }
}
