package org.straddle.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** Dates for people; files for programs use ISO 8601 ({@code LocalDate.toString}). */
public final class DateText {

    private final DateTimeFormatter whole;
    private final DateTimeFormatter day;
    private final DateTimeFormatter weekday;
    private final DateTimeFormatter dated;
    private final DateTimeFormatter heading;

    private DateText(Language language) {
        whole = DateTimeFormatter.ofPattern("d MMM uuuu", language.locale());
        day = DateTimeFormatter.ofPattern("d MMM", language.locale());
        weekday = DateTimeFormatter.ofPattern("EEE d MMM", language.locale());
        dated = DateTimeFormatter.ofPattern("EEE d MMM uuuu", language.locale());
        heading = DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", language.locale());
    }

    private static final DateText CURRENT = new DateText(Language.current());

    /** In the language chosen at the start. */
    public static DateText inCurrent() {
        return CURRENT;
    }

    public static DateText in(Language language) {
        return language.equals(Language.current()) ? CURRENT : new DateText(language);
    }

    /** {@code 18 Jun 2027}. */
    public String of(LocalDate date) {
        return whole.format(date);
    }

    /** {@code 18 Jun}, where the year is plain. */
    public String day(LocalDate date) {
        return day.format(date);
    }

    /** {@code Fri 18 Jun}. */
    public String weekday(LocalDate date) {
        return weekday.format(date);
    }

    /** {@code Fri 18 Jun 2027}. */
    public String dated(LocalDate date) {
        return dated.format(date);
    }

    /** {@code Friday 18 June 2027}. */
    public String heading(LocalDate date) {
        return heading.format(date);
    }
}
