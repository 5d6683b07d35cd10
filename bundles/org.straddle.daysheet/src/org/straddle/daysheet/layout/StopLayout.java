package org.straddle.daysheet.layout;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.daysheet.sheet.Marking;
import org.straddle.daysheet.sheet.PlacedStop;
import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.drawing.Face;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * Lays out one stop and its turns. Words stay in sight while any of the bar is: they stand at the left edge of its
 * visible part.
 */
final class StopLayout {

    private static final Catalogue TEXTS = Catalogue.of(StopLayout.class);

    private static final int LEAST_WIDTH = 4;
    private static final int GAP = 3;
    private static final int KIND_SIZE = 13;
    private static final int PIN_SIZE = 10;
    /** Words in a block keep off its frame. */
    private static final int INSIDE = 4;
    /** In a narrower block the mark of the peak would hide the block. */
    private static final int LEAST_PEAK = 12;

    private final TimeScale scale;
    private final TextMeasure measure;
    private final Box body;

    StopLayout(TimeScale scale, TextMeasure measure, Box body) {
        this.scale = scale;
        this.measure = measure;
        this.body = body;
    }

    static int titleHeight(TextMeasure measure) {
        return Math.max(KIND_SIZE, measure.height(Face.PLAIN)) + 4;
    }

    static int turnHeight(TextMeasure measure) {
        return measure.height(Face.SMALL) + 3;
    }

    static int height(int turnRows, TextMeasure measure) {
        return titleHeight(measure) + turnRows * (turnHeight(measure) + GAP) + 1;
    }

    /** @param rowEnd where the row ends for words behind the bar */
    StopBox place(PlacedStop stop, int y, int rowEnd) {
        Box bar = bar(stop.window().start(), stop.window().end(), y, height(stop.turnRows(), measure));
        List<TurnBox> turns = new ArrayList<>();
        List<Finding> unmarked = new ArrayList<>(stop.findings());
        for (int i = 0; i < stop.turns().size(); i++) {
            TurnBox turn = turn(stop, i, bar, rowEnd);
            turns.add(turn);
            if (turn.mark().isEmpty()) {
                unmarked.addAll(turn.turn().findings());
            }
        }
        Box room = Box.between(Math.max(bar.x() + StopBox.BAND, body.x()) + GAP,
                Math.min(bar.right(), body.right()) - GAP, bar.y() + 1, titleHeight(measure));
        Optional<MarkBox> mark = Marking.of(unmarked).flatMap(marking -> MarkBox.rightIn(room, marking, measure));
        int right = mark.map(MarkBox::left).orElse(room.right() + GAP) - GAP;
        Optional<Box> pin = stop.stop().isPinned() ? square(right - PIN_SIZE, right, room, PIN_SIZE)
                : Optional.empty();
        int end = pin.map(box -> box.x() - GAP).orElse(right);
        Optional<Box> kind = stop.stop().getSite() == null ? Optional.empty()
                : square(room.x(), end, room, KIND_SIZE);
        Box words = Box.between(kind.map(box -> box.right() + GAP + 1).orElse(room.x()), end, room.y(),
                room.height());
        return new StopBox(stop, bar, kind, title(stop, words), pin, mark, List.copyOf(turns));
    }

    private Box bar(Instant from, Instant until, int y, int height) {
        int left = body.x() + scale.x(from);
        return Box.between(left, Math.max(left + LEAST_WIDTH, body.x() + scale.x(until)), y, height);
    }

    /** A square at the left of the room if it fits before the end. */
    private static Optional<Box> square(int x, int end, Box room, int size) {
        return x < room.x() || x + size > end ? Optional.empty()
                : Optional.of(new Box(x, room.y() + (room.height() - size) / 2, size, size));
    }

    private Optional<Label> title(PlacedStop stop, Box room) {
        Site site = stop.stop().getSite();
        String name = site == null ? TEXTS.text("nosite") : Naming.name(site);
        String squares = site == null ? "" : String.join(" ", site.getSquares());
        String times = TimeText.zulu(stop.window().start(), stop.window().end());
        String named = squares.isEmpty() ? name : name + " · " + squares;
        return Label.longest(List.of(named + " · " + times, named), room, Face.PLAIN, measure)
                .or(() -> Label.clipped(named, room, Face.PLAIN, measure));
    }

    private TurnBox turn(PlacedStop stop, int index, Box bar, int rowEnd) {
        PlacedTurn turn = stop.turns().get(index);
        int height = turnHeight(measure);
        int y = bar.y() + titleHeight(measure) + 1 + turn.row() * (height + GAP);
        Box block = bar(turn.window().start(), turn.window().end(), y, height);
        Box behind = Box.between(Math.max(block.right() + GAP, body.x()), end(stop, index, bar, block, rowEnd), y,
                height);
        Optional<Marking> marking = Marking.of(turn.findings());
        int marked = marking.map(m -> MarkBox.width(m, measure) + GAP).orElse(0);
        if (block.common(body).isEmpty()) {
            return new TurnBox(turn, block, Optional.empty(), Optional.empty(), Optional.empty());
        }
        Optional<Label> label = words(turn, block.common(body).inset(INSIDE, 0),
                new Box(behind.x(), y, Math.max(0, behind.width() - marked), height));
        int free = label.map(words -> Math.max(behind.x(), words.box().right() + GAP)).orElse(behind.x());
        Optional<MarkBox> mark = marking.flatMap(m -> MarkBox.leftIn(
                Box.between(free, behind.right(), y, height), m, measure));
        return new TurnBox(turn, block, label, mark, peak(turn, block));
    }

    /** Words may run to the next turn of the row, or to the end of the bar; those of a turn behind the bar farther. */
    private int end(PlacedStop stop, int index, Box bar, Box block, int rowEnd) {
        PlacedTurn turn = stop.turns().get(index);
        int end = stop.turns().stream().skip(index + 1L).filter(next -> next.row() == turn.row()).findFirst()
                .map(next -> body.x() + scale.x(next.window().start())).orElse(Integer.MAX_VALUE);
        boolean behind = !turn.window().start().isBefore(stop.window().end());
        int edge = block.right() < bar.x() ? bar.x() : behind ? rowEnd : bar.right();
        return Math.min(Math.min(end, edge), body.right()) - GAP;
    }

    /** The longest wording that fits, better inside the block than behind it. */
    private Optional<Label> words(PlacedTurn turn, Box inside, Box behind) {
        String letters = turn.bird().letters();
        String time = TimeText.zulu(turn.window().start());
        String name = turn.turn().getBird() == null ? TEXTS.text("nobird") : Naming.name(turn.turn().getBird());
        return Stream.of(letters + " · " + name + " · " + time, letters + " " + time, letters)
                .flatMap(wording -> Stream.of(inside, behind)
                        .flatMap(room -> Label.longest(List.of(wording), room, Face.SMALL, measure).stream()))
                .findFirst();
    }

    private Optional<Integer> peak(PlacedTurn turn, Box block) {
        return turn.pass().map(pass -> body.x() + scale.x(pass.tca()))
                .filter(x -> block.width() >= LEAST_PEAK && x > block.x() && x < block.right());
    }
}
