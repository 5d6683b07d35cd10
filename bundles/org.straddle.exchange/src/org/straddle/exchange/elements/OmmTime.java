package org.straddle.exchange.elements;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times in messages: by month and day, or by day of the year; CCSDS 502.0-B-3, 7.5.10. UTC. */
final class OmmTime {

    private static final Pattern TIME = Pattern
            .compile("(\\d{4})-(?:(\\d{2})-(\\d{2})|(\\d{3}))[T ](\\d{2}):(\\d{2}):(\\d{2})(?:\\.(\\d{0,30}))?Z?");
    private static final DateTimeFormatter PRINT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSSSSS")
            .withZone(ZoneOffset.UTC);

    private OmmTime() {
    }

    /** Empty when the text is not a time; rounded to nanoseconds. A leap second has no place in an Instant. */
    static Optional<Instant> parse(String text) {
        Matcher m = TIME.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            int year = Integer.parseInt(m.group(1));
            LocalDate date = m.group(4) != null ? LocalDate.ofYearDay(year, Integer.parseInt(m.group(4)))
                    : LocalDate.of(year, Integer.parseInt(m.group(2)), Integer.parseInt(m.group(3)));
            LocalTime time = LocalTime.of(Integer.parseInt(m.group(5)), Integer.parseInt(m.group(6)),
                    Integer.parseInt(m.group(7)));
            return Optional.of(date.atTime(time).toInstant(ZoneOffset.UTC).plusNanos(nanos(m.group(8))));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static long nanos(String fraction) {
        String ten = ((fraction == null ? "" : fraction) + "0000000000").substring(0, 10);
        return (Long.parseLong(ten) + 5) / 10;
    }

    /** All nine digits, so that reading gives the same instant back. */
    static String print(Instant instant) {
        return PRINT.format(instant);
    }
}
