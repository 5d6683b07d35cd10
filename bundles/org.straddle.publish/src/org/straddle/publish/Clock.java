package org.straddle.publish;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

import org.straddle.words.Catalogue;

/**
 * Prints instants in UTC and in the event's zone, no finer than they are known: a time that may be off by eight
 * seconds is not printed with seconds.
 */
final class Clock {

    private static final Catalogue TEXTS = Catalogue.of(Clock.class);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TO_MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TO_SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    /** Steps that people read easily, seconds. */
    private static final int[] STEPS = {1, 5, 10, 30, 60, 120, 300, 600, 900, 1800};

    private final ZoneId zone;

    Clock(ZoneId zone) {
        this.zone = zone;
    }

    LocalDate localDate(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    String zoneName() {
        return zone.getId();
    }

    /** To whole minutes. */
    Moment minute(Instant instant, LocalDate under) {
        return moment(instant, Duration.ofMinutes(1), under);
    }

    /**
     * @param error how far the instant may be off; the step of rounding is never finer
     * @param under the local day in whose table it stands: another day is printed in full
     */
    Moment moment(Instant instant, Duration error, LocalDate under) {
        int step = step(error);
        long second = instant.getEpochSecond() + (instant.getNano() >= 500_000_000 ? 1 : 0);
        Instant rounded = Instant.ofEpochSecond(Math.floorDiv(second + step / 2, step) * step);
        DateTimeFormatter form = step < 60 ? TO_SECOND : TO_MINUTE;
        return new Moment(rounded, print(rounded, ZoneOffset.UTC, form, under), print(rounded, zone, form, under));
    }

    String stamp(Instant instant) {
        return TEXTS.text("clock.utc", "atZone", STAMP.format(instant.atZone(ZoneOffset.UTC)));
    }

    /** The least readable step that is no finer than an error, seconds. */
    static int step(Duration error) {
        for (int step : STEPS) {
            if (error.compareTo(Duration.ofSeconds(step)) <= 0) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    private static String print(Instant instant, ZoneId zone, DateTimeFormatter form, LocalDate under) {
        LocalDate date = instant.atZone(zone).toLocalDate();
        return (date.equals(under) ? "" : date + " ") + form.format(instant.atZone(zone));
    }
}
