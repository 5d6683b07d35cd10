package org.straddle.daysheet.layout;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.straddle.daysheet.sheet.Lane;
import org.straddle.daysheet.sheet.Marking;
import org.straddle.daysheet.sheet.OpenSpan;
import org.straddle.daysheet.sheet.PlacedDrive;
import org.straddle.daysheet.sheet.PlacedStop;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.drawing.Face;
import org.straddle.model.Base;
import org.straddle.model.naming.Naming;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** Lays out one lane from its top. */
final class LaneLayout {

    private static final Catalogue TEXTS = Catalogue.of(LaneLayout.class);

    private static final int PAD = 7;
    private static final int ROW_GAP = 4;
    /** Road that is seen at both sides of the words on it. */
    private static final int ROAD_BESIDE_WORDS = 16;
    private static final int BASE_SIZE = 12;
    private static final int BASE_INSET = 5;

    private final Lane lane;
    private final TimeScale scale;
    private final TextMeasure measure;
    private final int gutter;
    private final int[] rowTops;
    private final Box strip;

    /**
     * @param days those in sight: rows that are empty on them are left out
     * @param body the sight of the lanes, right of their heads
     */
    LaneLayout(Lane lane, List<SheetDay> days, TimeScale scale, TextMeasure measure, Box body, int y) {
        this.lane = lane;
        this.scale = scale;
        this.measure = measure;
        this.gutter = body.x();
        this.rowTops = new int[lane.rows() + 1];
        rowTops[0] = y + PAD;
        for (int row = 0; row < lane.rows(); row++) {
            int turnRows = turnRows(row, days);
            int height = turnRows == 0 && row > 0 ? 0
                    : StopLayout.height(Math.max(1, turnRows), measure) + ROW_GAP;
            rowTops[row + 1] = rowTops[row] + height;
        }
        int head = measure.height(Face.STRONG) + measure.height(Face.SMALL) + 2 * PAD;
        this.strip = new Box(body.x(), y, body.width(), Math.max(head, rowTops[lane.rows()] - ROW_GAP + PAD - y));
    }

    int height() {
        return strip.height();
    }

    LaneBox place() {
        StopLayout stopLayout = new StopLayout(scale, measure, strip);
        List<StopBox> stops = lane.stops().stream().filter(this::isShown)
                .map(stop -> stopLayout.place(stop, rowTops[stop.row()], rowEnd(stop))).toList();
        List<DriveBox> drives = lane.drives().stream().filter(drive -> isShown(drive.window())).map(this::drive).toList();
        List<LightBox> light = lane.light().stream().filter(l -> isShown(l.window()))
                .map(l -> new LightBox(l, across(l.window(), strip.y(), strip.height()).common(strip))).toList();
        List<SpanBox> spans = lane.spans().stream().filter(span -> isShown(span.window()))
                .map(span -> span(span, obstacles(stops, drives))).toList();
        Box head = Box.between(0, gutter, strip.y(), strip.height());
        int side = measure.height(Face.STRONG) + 10;
        Box number = new Box(PAD, head.y() + PAD, side, side);
        Box names = Box.between(number.right() + PAD, head.right() - PAD, number.y(), measure.height(Face.STRONG));
        Box under = new Box(names.x(), names.bottom(), names.width(),
                Math.max(MarkBox.SIZE, measure.height(Face.SMALL)) + 2);
        Optional<MarkBox> mark = Marking.of(lane.open()).flatMap(marking -> MarkBox.rightIn(under, marking, measure));
        Box summary = Box.between(under.x(), mark.map(m -> m.left() - 4).orElse(under.right()), under.y(),
                under.height());
        return new LaneBox(lane, head, strip, number, Label.clipped(lane.name(), names, Face.STRONG, measure),
                summary(summary), mark, light, spans, drives, stops);
    }

    private Optional<Label> summary(Box room) {
        int stops = lane.stops().size();
        int turns = lane.stops().stream().mapToInt(stop -> stop.turns().size()).sum();
        return Label.longest(List.of(TEXTS.text("lane.both", "stops", stops, "turns", turns), TEXTS.text("lane.turns", "turns", turns)),
                room, Face.SMALL, measure);
    }

    /** 0 when nothing stands in the row on these days. */
    private int turnRows(int row, List<SheetDay> days) {
        int drives = lane.drives().stream().anyMatch(drive -> drive.row() == row && isOn(drive.window(), days)) ? 1 : 0;
        return lane.stops().stream().filter(stop -> stop.row() == row && isOn(stop.extent(), days))
                .mapToInt(PlacedStop::turnRows).reduce(drives, Math::max);
    }

    private static boolean isOn(Window window, List<SheetDay> days) {
        return days.stream().anyMatch(day -> day.window().overlaps(window));
    }

    private boolean isShown(PlacedStop stop) {
        return isShown(stop.extent());
    }

    private boolean isShown(Window window) {
        return window.overlaps(scale.shown(strip.width()));
    }

    private Box across(Window window, int y, int height) {
        return Box.between(gutter + scale.x(window.start()), gutter + scale.x(window.end()), y, height);
    }

    /** The next stop in the row, or the end of the time in which the team is out. */
    private int rowEnd(PlacedStop stop) {
        Stream<Instant> next = lane.stops().stream().filter(other -> other.row() == stop.row()
                && other.window().start().isAfter(stop.window().start())).map(other -> other.extent().start());
        Stream<Instant> home = lane.spans().stream().map(OpenSpan::window)
                .filter(span -> span.contains(stop.window().start())).map(Window::end);
        return Stream.concat(next, home).min(Comparator.naturalOrder()).map(end -> gutter + scale.x(end))
                .orElse(strip.right());
    }

    private DriveBox drive(PlacedDrive drive) {
        Box box = across(drive.window(), rowTops[drive.row()], StopLayout.titleHeight(measure));
        Duration total = drive.road().total();
        String need = TEXTS.text("minutes", "minutes", minutes(total));
        List<String> wordings = drive.fits() ? List.of(TEXTS.text("drive", "need", need), need)
                : List.of(TEXTS.text("drive.short", "need", need,
                        "short", minutes(total.minus(drive.room()))), need);
        Box sight = box.common(strip);
        Box under = new Box(sight.x(), sight.bottom(), sight.width(), measure.height(Face.SMALL));
        return new DriveBox(drive, box, Label.longest(wordings, sight.inset(ROAD_BESIDE_WORDS, 0), Face.SMALL, measure)
                .or(() -> Label.longest(wordings, under, Face.SMALL, measure)).map(label -> middle(label, sight)));
    }

    private static Label middle(Label label, Box room) {
        return label.shifted(room.x() + (room.width() - label.box().width()) / 2 - label.box().x());
    }

    private static long minutes(Duration duration) {
        return Math.round(duration.toSeconds() / 60.0);
    }

    private static List<Box> obstacles(List<StopBox> stops, List<DriveBox> drives) {
        List<Box> boxes = new ArrayList<>();
        drives.forEach(drive -> drive.label().map(Label::box).ifPresent(boxes::add));
        for (StopBox stop : stops) {
            boxes.add(stop.box());
            for (TurnBox turn : stop.turns()) {
                boxes.add(turn.box());
                turn.label().map(Label::box).ifPresent(boxes::add);
                turn.mark().map(MarkBox::shape).ifPresent(boxes::add);
            }
        }
        return boxes;
    }

    /** Bases stand under the first row's drives, as far as nothing is in their way. */
    private SpanBox span(OpenSpan span, List<Box> obstacles) {
        Box box = across(span.window(), strip.y() + 3, strip.height() - 6);
        Box line = new Box(box.x() + BASE_INSET, rowTops[0] + StopLayout.titleHeight(measure),
                Math.max(0, box.width() - 2 * BASE_INSET), Math.max(BASE_SIZE, measure.height(Face.SMALL)))
                .common(strip);
        Optional<BaseBox> start = span.start().flatMap(base -> base(base, box, line, obstacles, true));
        List<Box> taken = new ArrayList<>(obstacles);
        start.ifPresent(base -> taken.add(base.whole()));
        return new SpanBox(span, box, start, span.end().flatMap(base -> base(base, box, line, taken, false)));
    }

    private Optional<BaseBox> base(Base base, Box span, Box line, List<Box> obstacles, boolean atLeft) {
        IntStream edges = obstacles.stream().filter(line::overlaps).mapToInt(o -> atLeft ? o.x() : o.right());
        int edge = (atLeft ? edges.min() : edges.max()).orElse(atLeft ? line.right() : line.x());
        Box room = atLeft ? Box.between(line.x(), edge - 4, line.y(), line.height())
                : Box.between(edge + 4, line.right(), line.y(), line.height());
        boolean scrolledOut = atLeft ? span.x() < strip.x() : span.right() > strip.right();
        if (scrolledOut || room.width() < BASE_SIZE) {
            return Optional.empty();
        }
        Optional<Label> name = Label.clipped(Naming.name(base),
                Box.between(room.x() + BASE_SIZE + 4, room.right(), room.y(), room.height()), Face.SMALL, measure);
        int width = BASE_SIZE + name.map(label -> 4 + label.box().width()).orElse(0);
        int shift = atLeft ? 0 : room.width() - width;
        return Optional.of(new BaseBox(
                new Box(room.x() + shift, room.y() + (room.height() - BASE_SIZE) / 2, BASE_SIZE, BASE_SIZE),
                name.map(label -> label.shifted(shift))));
    }
}
