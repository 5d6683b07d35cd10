package org.straddle.daysheet.layout;

import java.util.List;
import java.util.Optional;

import org.straddle.daysheet.sheet.Marking;
import org.straddle.drawing.Face;

/** The mark of findings: a square for the shape, and the number behind it when there are several. */
public record MarkBox(Marking marking, Box shape, Optional<Label> count) {

    static final int SIZE = 13;
    private static final int GAP = 2;

    /** At the right edge of the room, with the count if it fits; empty when not even the shape fits. */
    static Optional<MarkBox> rightIn(Box room, Marking marking, TextMeasure measure) {
        int whole = width(marking, measure);
        int width = whole <= room.width() ? whole : SIZE;
        return leftIn(Box.between(room.right() - width, room.right(), room.y(), room.height()), marking, measure)
                .filter(mark -> mark.shape().x() >= room.x());
    }

    /** At the left edge of the room. */
    static Optional<MarkBox> leftIn(Box room, Marking marking, TextMeasure measure) {
        if (room.width() < SIZE) {
            return Optional.empty();
        }
        Box shape = new Box(room.x(), room.y() + (room.height() - SIZE) / 2, SIZE, SIZE);
        Box behind = Box.between(shape.right() + GAP, room.right(), room.y(), room.height());
        return Optional.of(new MarkBox(marking, shape, marking.count() < 2 ? Optional.empty()
                : Label.longest(List.of(String.valueOf(marking.count())), behind, Face.SMALL, measure)));
    }

    /** With the count. */
    static int width(Marking marking, TextMeasure measure) {
        return marking.count() < 2 ? SIZE
                : SIZE + GAP + measure.width(String.valueOf(marking.count()), Face.SMALL);
    }

    int left() {
        return shape.x();
    }

}
