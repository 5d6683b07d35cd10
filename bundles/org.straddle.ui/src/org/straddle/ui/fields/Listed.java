package org.straddle.ui.fields;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Several values between commas. */
public final class Listed<T> implements Notation<List<T>> {

    private final Notation<T> one;

    private Listed(Notation<T> one) {
        this.one = one;
    }

    /** {@code a, b, c} */
    public static <T> Listed<T> of(Notation<T> one) {
        return new Listed<>(one);
    }

    @Override
    public String print(List<T> values) {
        return String.join(", ", values.stream().map(one::print).toList());
    }

    @Override
    public List<T> parse(String text) {
        return Stream.of(text.split("[,;]")).map(String::strip).filter(part -> !part.isEmpty()).map(one::parse)
                .filter(Objects::nonNull).toList();
    }
}
