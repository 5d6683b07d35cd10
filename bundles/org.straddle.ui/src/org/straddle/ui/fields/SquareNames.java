package org.straddle.ui.fields;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.grid.Square;

/** Names of squares between blanks or commas: {@code HP94 IP04}. */
public final class SquareNames implements Notation<List<String>> {

    /** One square, such as {@code HP94}. */
    public static Notation<String> one() {
        return new Notation<>() {
            @Override
            public String print(String value) {
                return value == null ? "" : value;
            }

            @Override
            public String parse(String text) {
                return Square.parse(text.strip()).name();
            }
        };
    }

    @Override
    public String print(List<String> names) {
        return String.join(" ", names);
    }

    @Override
    public List<String> parse(String text) {
        return Stream.of(text.strip().split("[\\s,;/]+")).filter(part -> !part.isEmpty())
                .map(part -> Square.parse(part).name()).distinct().toList();
    }
}
