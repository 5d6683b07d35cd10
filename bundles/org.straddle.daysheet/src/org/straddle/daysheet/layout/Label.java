package org.straddle.daysheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.drawing.Face;

/** A line of text that fits its box. */
public record Label(String text, Box box, Face face) {

    private static final String ELLIPSIS = "…";
    /** An ellipsis behind fewer letters than this tells nothing. */
    private static final int LEAST_LETTERS = 3;

    /** The longest wording that fits, given longest first, at the left edge of the room. */
    public static Optional<Label> longest(List<String> wordings, Box room, Face face, TextMeasure measure) {
        return wordings.stream().filter(text -> !text.isEmpty() && measure.width(text, face) <= room.width())
                .findFirst().map(text -> at(text, room, face, measure));
    }

    /** The text, cut with an ellipsis when it is too long; empty when not even three letters fit. */
    public static Optional<Label> clipped(String text, Box room, Face face, TextMeasure measure) {
        if (measure.width(text, face) <= room.width()) {
            return text.isEmpty() ? Optional.empty() : Optional.of(at(text, room, face, measure));
        }
        int fits = 0;
        int tooLong = text.length();
        while (tooLong - fits > 1) {
            int middle = (fits + tooLong) / 2;
            if (measure.width(cut(text, middle), face) <= room.width()) {
                fits = middle;
            } else {
                tooLong = middle;
            }
        }
        return fits < LEAST_LETTERS ? Optional.empty() : Optional.of(at(cut(text, fits), room, face, measure));
    }

    /** The text in as few lines as fit a width, broken at spaces; a word that is longer has a line of its own. */
    static List<String> folded(String text, int width, Face face, TextMeasure measure) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && measure.width(line + " " + word, face) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** With the middle of the text at an x. */
    static Label centred(String text, int x, Box row, Face face, TextMeasure measure) {
        int width = measure.width(text, face);
        return at(text, new Box(x - width / 2, row.y(), width, row.height()), face, measure);
    }

    Label shifted(int pixels) {
        return new Label(text, new Box(box.x() + pixels, box.y(), box.width(), box.height()), face);
    }

    private static Label at(String text, Box room, Face face, TextMeasure measure) {
        int height = measure.height(face);
        return new Label(text, new Box(room.x(), room.y() + (room.height() - height) / 2,
                measure.width(text, face), height), face);
    }

    private static String cut(String text, int letters) {
        int end = letters > 0 && Character.isHighSurrogate(text.charAt(letters - 1)) ? letters - 1 : letters;
        return text.substring(0, end).stripTrailing() + ELLIPSIS;
    }
}
