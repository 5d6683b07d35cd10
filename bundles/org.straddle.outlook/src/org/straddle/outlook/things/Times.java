package org.straddle.outlook.things;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Instants as people read them. UTC times end in Z, local ones name the zone's offset where there is room. */
public final class Times {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.UK);
    private static final DateTimeFormatter DAY_AND_CLOCK = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.UK);
    private static final DateTimeFormatter ENTRY = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.UK);
    private static final DateTimeFormatter ENTRY_SECONDS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.UK);

    private Times() {
    }

    public static String utcClock(Instant instant) {
        return instant == null ? "–" : CLOCK.format(instant.atOffset(ZoneOffset.UTC)) + "Z";
    }

    public static String utcSeconds(Instant instant) {
        return SECONDS.format(instant.atOffset(ZoneOffset.UTC));
    }

    public static String utcDay(Instant instant) {
        return DAY.format(instant.atOffset(ZoneOffset.UTC));
    }

    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** As typed into a field; seconds only where there are any. */
    public static String utcEntry(Instant instant) {
        return (instant.getEpochSecond() % 60 == 0 ? ENTRY : ENTRY_SECONDS).format(instant.atOffset(ZoneOffset.UTC));
    }

    public static String local(Instant instant, ZoneId zone) {
        return DAY_AND_CLOCK.format(instant.atZone(zone));
    }

    public static String localSeconds(Instant instant, ZoneId zone) {
        return SECONDS.format(instant.atZone(zone));
    }

    public static String minutes(Duration duration) {
        return String.format(Locale.ROOT, "%d:%02d", duration.toMinutes(), duration.toSecondsPart());
    }
}
