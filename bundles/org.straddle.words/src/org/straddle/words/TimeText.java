package org.straddle.words;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;

/**
 * Instants for people: local time first, as people on the road read it, then UTC; once where both are the same. Files for
 * programs use ISO 8601 in UTC ({@code Instant.toString}).
 */
public final class TimeText {

    private static final TimeText UTC = of(ZoneOffset.UTC);

    private final ZoneId zone;
    private final Catalogue texts;
    private final DateText dates;
    private final DateTimeFormatter minute;
    private final DateTimeFormatter second;

    private TimeText(ZoneId zone, Language language) {
        this.zone = zone;
        this.texts = Catalogue.of(TimeText.class).in(language);
        this.dates = DateText.in(language);
        this.minute = DateTimeFormatter.ofPattern("HH:mm", language.locale());
        this.second = DateTimeFormatter.ofPattern("HH:mm:ss", language.locale());
    }

    /** Of an event in a zone, in the language chosen at the start. */
    public static TimeText of(ZoneId zone) {
        return new TimeText(zone, Language.current());
    }

    /** In UTC alone, in the language chosen at the start. */
    public static TimeText utc() {
        return UTC;
    }

    /** {@code 12:02Z}: UTC to the minute below, where there is no room for more; a dash where there is no instant. */
    public static String zulu(Instant instant) {
        return instant == null ? "–" : UTC.clock(instant) + "Z";
    }

    /** {@code 12:02–12:14Z}. */
    public static String zulu(Instant start, Instant end) {
        return (start == null ? "–" : UTC.clock(start)) + "–" + zulu(end);
    }

    public TimeText in(Language language) {
        return new TimeText(zone, language);
    }

    /** {@code 21 Jun 12:02 (10:02 UTC)}; the UTC day is named where it differs. {@code 21 Jun 12:02 UTC} where both are one. */
    public String at(Instant instant) {
        DateTimeFormatter clock = clock(instant, instant);
        String local = moment(instant, zone, null, clock);
        return isUtc(instant) ? texts.text("time.utc", "time", local)
                : both(local, moment(instant, ZoneOffset.UTC, instant.atZone(zone).toLocalDate(), clock));
    }

    /** {@code 21 Jun 2031 12:02 (10:02 UTC)}, for what is not of the days of the event. */
    public String whole(Instant instant) {
        DateTimeFormatter clock = clock(instant, instant);
        String local = dates.of(date(instant)) + " " + clock.format(instant.atZone(zone));
        return isUtc(instant) ? texts.text("time.utc", "time", local)
                : both(local, moment(instant, ZoneOffset.UTC, date(instant), clock));
    }

    /** {@code 21 Jun 12:02–12:14 (10:02–10:14 UTC)}; days are named where they differ. */
    public String during(Instant start, Instant end) {
        String local = span(start, end, zone, null);
        return isUtc(start) && isUtc(end) ? texts.text("time.utc", "time", local)
                : both(local, span(start, end, ZoneOffset.UTC, start.atZone(zone).toLocalDate()));
    }

    /** The same of a start and a length; of no length, the instant. */
    public String during(Instant start, Duration length) {
        return length.isZero() ? at(start) : during(start, start.plus(length));
    }

    /** The same to the minute below, where seconds are of no use. */
    public String minutes(Instant start, Instant end) {
        return during(start.truncatedTo(ChronoUnit.MINUTES), end.truncatedTo(ChronoUnit.MINUTES));
    }

    /** The local day. */
    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** {@code Fri 18 Jun}, the local day. */
    public String weekday(Instant instant) {
        return dates.weekday(date(instant));
    }

    /** {@code 12:02}, local, to the minute below. */
    public String clock(Instant instant) {
        return minute.format(instant.atZone(zone));
    }

    /** {@code 12:02:31}, local. */
    public String seconds(Instant instant) {
        return second.format(instant.atZone(zone));
    }

    private String both(String local, String utc) {
        return texts.text("time.both", "local", local, "utc", utc);
    }

    private boolean isUtc(Instant instant) {
        return zone.getRules().getOffset(instant).equals(ZoneOffset.UTC);
    }

    private String span(Instant start, Instant end, ZoneId in, LocalDate known) {
        DateTimeFormatter clock = clock(start, end);
        return moment(start, in, known, clock) + "–" + moment(end, in, start.atZone(in).toLocalDate(), clock);
    }

    private String moment(Instant instant, ZoneId in, LocalDate known, DateTimeFormatter clock) {
        LocalDate date = instant.atZone(in).toLocalDate();
        return (date.equals(known) ? "" : dates.day(date) + " ") + clock.format(instant.atZone(in));
    }

    private DateTimeFormatter clock(Instant first, Instant last) {
        return wholeMinute(first) && wholeMinute(last) ? minute : second;
    }

    private static boolean wholeMinute(Instant instant) {
        return instant.truncatedTo(ChronoUnit.SECONDS).getEpochSecond() % 60 == 0;
    }
}
