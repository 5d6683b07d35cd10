package org.straddle.cli;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.straddle.words.Catalogue;

/** Wrong lines of a table: the first few, and how many more; a whole table of them helps nobody. */
final class RefusedLines {

    private static final Catalogue TEXTS = Catalogue.of(RefusedLines.class);

    /** With the sentence after them the most that is printed of bad input. */
    private static final int MOST = 3;

    private RefusedLines() {
    }

    /** Ends with what was done and what to do. */
    static <T> String of(List<T> refused, Function<T, String> line) {
        return refused.stream().limit(MOST).map(line).collect(Collectors.joining("\n"))
                + TEXTS.text("refusedLines.unchanged", "more", Math.max(0, refused.size() - MOST));
    }
}
