package org.straddle.sky;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;

import org.straddle.words.Catalogue;

/**
 * A stretch of time, half-open: it holds its start and not its end, so that windows laid end to
 * end share no instant. Both instants are UTC.
 *
 * @param start first instant inside
 * @param end   first instant after; later than {@code start}
 */
public record Window(Instant start, Instant end) {

    private static final Catalogue TEXTS = Catalogue.of(Window.class);

    /** By start, then by end. */
    public static final Comparator<Window> IN_TIME_ORDER =
            Comparator.comparing(Window::start).thenComparing(Window::end);

    /** @throws IllegalArgumentException when the end is not after the start */
    public Window {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
        if (!start.isBefore(end)) {
            throw new IllegalArgumentException("A window must end after it starts: " + start + "/" + end);
        }
    }

    /** The window of the given length from {@code start} on. */
    public static Window of(Instant start, Duration length) {
        return new Window(start, start.plus(length));
    }

    /**
     * Reads ISO 8601 interval notation, as {@link #toString()} writes it:
     * {@code 2031-06-21T10:02:00Z/2031-06-21T10:14:00Z}; the second part may be a duration
     * ({@code PT12M}).
     *
     * @throws IllegalArgumentException when the text is no such interval
     */
    public static Window parse(String text) {
        String[] parts = text.trim().split("/", -1);
        if (parts.length != 2) {
            throw new IllegalArgumentException(TEXTS.text("window.notWindowStart", "text", text));
        }
        try {
            Instant start = Instant.parse(parts[0]);
            return parts[1].startsWith("P") ? of(start, Duration.parse(parts[1]))
                    : new Window(start, Instant.parse(parts[1]));
        } catch (DateTimeException | ArithmeticException e) {
            throw new IllegalArgumentException(TEXTS.text("window.notWindowStart", "text", text), e);
        }
    }

    public Duration duration() {
        return Duration.between(start, end);
    }

    public boolean contains(Instant instant) {
        return !instant.isBefore(start) && instant.isBefore(end);
    }

    public boolean contains(Window other) {
        return !other.start.isBefore(start) && !other.end.isAfter(end);
    }

    /** Whether the two share an instant; windows that only touch do not. */
    public boolean overlaps(Window other) {
        return start.isBefore(other.end) && other.start.isBefore(end);
    }

    /** What both hold, empty when they share no instant. */
    public Optional<Window> intersection(Window other) {
        Instant from = start.isAfter(other.start) ? start : other.start;
        Instant to = end.isBefore(other.end) ? end : other.end;
        return from.isBefore(to) ? Optional.of(new Window(from, to)) : Optional.empty();
    }

    /** The time between the two, whichever comes first; zero when they touch or overlap. */
    public Duration gapTo(Window other) {
        if (!other.start.isBefore(end)) {
            return Duration.between(end, other.start);
        }
        return other.end.isAfter(start) ? Duration.ZERO : Duration.between(other.end, start);
    }

    @Override
    public String toString() {
        return start + "/" + end;
    }
}
