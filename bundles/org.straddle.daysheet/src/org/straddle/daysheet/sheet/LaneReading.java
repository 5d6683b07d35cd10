package org.straddle.daysheet.sheet;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.atlas.scene.EventScene;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Finding;
import org.straddle.check.FindingsByThing;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.MeanPosition;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** Reads what one team does. */
final class LaneReading {

    private static final Catalogue TEXTS = Catalogue.of(LaneReading.class);

    private final Outlook outlook;
    private final FindingsByThing findings;
    private final LightMemory memory;
    private final Map<Bird, BirdMark> birds;
    private final List<SheetDay> days;
    private int untimedTurns;

    LaneReading(Outlook outlook, FindingsByThing findings, LightMemory memory, Map<Bird, BirdMark> birds,
            List<SheetDay> days) {
        this.outlook = outlook;
        this.findings = findings;
        this.memory = memory;
        this.birds = birds;
        this.days = days;
    }

    /** @param stops those with usable times */
    Lane read(Optional<Team> team, List<Stop> stops) {
        Rows rows = new Rows();
        List<PlacedStop> placed = stops.stream().sorted(Comparator.comparing(Stop::getArrival))
                .map(stop -> place(stop, rows)).toList();
        List<TeamDay> out = team.map(Team::getDays).map(List::copyOf).orElse(List.of());
        List<OpenSpan> spans = out.stream().flatMap(LaneReading::span)
                .sorted(Comparator.comparing(OpenSpan::window, Window.IN_TIME_ORDER)).toList();
        List<PlacedDrive> drives = new DriveReading(outlook, rows).read(spans, placed);
        return new Lane(team, LaneMark.of(team.map(Team::getNumber).orElse(0)), name(team), spans,
                light(placed, spans), placed, drives, Math.max(1, rows.count()),
                team.map(this::aboutTeamOnly).orElse(List.of()));
    }

    /** Turns that were met and have no usable times. */
    int untimedTurns() {
        return untimedTurns;
    }

    private static Stream<OpenSpan> span(TeamDay day) {
        return SheetReading.window(day.getFrom(), day.getUntil()).map(window -> new OpenSpan(window,
                Optional.ofNullable(day.getStart()), Optional.ofNullable(day.getEnd()))).stream();
    }

    private static String name(Optional<Team> team) {
        return team.map(LaneReading::name).orElseGet(() -> TEXTS.text("lane.noteam"));
    }

    /** Its number stands beside it. */
    private static String name(Team team) {
        return team.getName() == null || team.getName().isBlank() ? TEXTS.text("lane.unnamed") : team.getName().strip();
    }

    private PlacedStop place(Stop stop, Rows rows) {
        Rows turnRows = new Rows();
        List<PlacedTurn> turns = stop.getTurns().stream().filter(this::isTimed)
                .sorted(Comparator.comparing(Turn::getStart)).map(turn -> place(stop, turn, turnRows)).toList();
        Window window = new Window(stop.getArrival(), stop.getDeparture());
        // A turn may stick out of its stop by mistake; nothing else may be drawn where it does.
        Window extent = turns.stream().map(PlacedTurn::window).reduce(window, SheetReading::hull);
        return new PlacedStop(stop, shape(stop.getSite()), window, extent, rows.place(extent), turns, Math.max(1, turnRows.count()),
                about(stop));
    }

    private boolean isTimed(Turn turn) {
        boolean timed = SheetReading.window(turn.getStart(), turn.getEnd()).isPresent();
        untimedTurns += timed ? 0 : 1;
        return timed;
    }

    private PlacedTurn place(Stop stop, Turn turn, Rows rows) {
        Window window = new Window(turn.getStart(), turn.getEnd());
        return new PlacedTurn(turn, window, rows.place(window), birds.getOrDefault(turn.getBird(), BirdMark.NONE),
                pass(stop.getSite(), turn.getBird(), window), about(turn));
    }

    private Optional<Pass> pass(Site site, Bird bird, Window window) {
        return site == null || bird == null ? Optional.empty()
                : outlook.passes(site, bird).stream().map(SitePass::pass)
                        .max(Comparator.comparing(pass -> pass.window().intersection(window)
                                .map(Window::duration).orElse(Duration.ZERO)))
                        .filter(pass -> pass.window().overlaps(window));
    }

    private List<Finding> about(Identified thing) {
        return findings.about(thing.getId());
    }

    private List<Finding> aboutTeamOnly(Team team) {
        return about(team).stream().filter(finding -> finding.objects().stream()
                .noneMatch(object -> object instanceof Stop || object instanceof Turn)).toList();
    }

    /** At the middle of the day's sites, else of its bases, else of all places that the team visits. */
    private List<Light> light(List<PlacedStop> stops, List<OpenSpan> spans) {
        Optional<GeoPosition> anyDay = middle(sites(stops.stream())).or(() -> middle(bases(spans.stream())));
        List<Light> light = new ArrayList<>();
        for (SheetDay day : days) {
            middle(sites(stops.stream().filter(stop -> stop.window().overlaps(day.window()))))
                    .or(() -> middle(bases(spans.stream().filter(span -> span.window().overlaps(day.window())))))
                    .or(() -> anyDay)
                    .ifPresent(position -> light.addAll(memory.light(outlook, position, day.window())));
        }
        return List.copyOf(light);
    }

    private static Optional<GeoPosition> middle(Stream<GeoPosition> positions) {
        return MeanPosition.of(positions.toList());
    }

    private Stream<GeoPosition> sites(Stream<PlacedStop> stops) {
        return stops.map(stop -> stop.stop().getSite()).filter(Objects::nonNull).filter(outlook::isPlaced)
                .map(outlook::position);
    }

    private Stream<GeoPosition> bases(Stream<OpenSpan> spans) {
        return spans.flatMap(span -> Stream.concat(span.start().stream(), span.end().stream()))
                .filter((Base base) -> outlook.isPlaced(base)).map(outlook::position);
    }

    private Optional<SiteSpot.Kind> shape(Site site) {
        return Optional.ofNullable(site)
                .map(known -> EventScene.kind(known.getKind(), List.copyOf(outlook.squares(known))));
    }
}
