package org.straddle.publish;

import java.util.Arrays;
import java.util.List;

/** Words that people typed, made fit for one line of a sheet: nothing in them may break a line or the markup. */
final class Line {

    private Line() {
    }

    /** Runs of blanks, line ends and control characters become one space; never null. */
    static String of(String typed) {
        return typed == null ? "" : typed.replaceAll("[\\p{Cntrl}\\p{Cs}\\uFFFE\\uFFFF\\s]+", " ").strip();
    }

    static String of(String typed, String otherwise) {
        String line = of(typed);
        return line.isEmpty() ? otherwise : line;
    }

    /** The paragraphs of a longer text, which blank lines part. */
    static List<String> paragraphs(String typed) {
        return typed == null ? List.of()
                : Arrays.stream(typed.split("\\R\\s*\\R")).map(Line::of).filter(line -> !line.isEmpty()).toList();
    }
}
