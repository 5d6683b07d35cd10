package org.straddle.check.rules;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Identified;
import org.straddle.model.InertText;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/**
 * How findings name things and times: local time first, as people on the road read it, then UTC; once where both are the
 * same.
 */
public record Words(ZoneId zone) {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ENGLISH);

    /** {@code 21 Jun 12:02 (10:02 UTC)}; the UTC day is named where it differs. {@code 21 Jun 12:02 UTC} where both are one. */
    public String at(Instant instant) {
        if (isUtc(instant)) {
            return DAY.format(instant.atZone(zone)) + " " + clock(instant).format(instant.atZone(zone)) + " UTC";
        }
        DateTimeFormatter clock = clock(instant);
        LocalDate local = instant.atZone(zone).toLocalDate();
        LocalDate utc = instant.atZone(ZoneOffset.UTC).toLocalDate();
        return DAY.format(local) + " " + clock.format(instant.atZone(zone)) + " ("
                + (local.equals(utc) ? "" : DAY.format(utc) + " ") + clock.format(instant.atZone(ZoneOffset.UTC))
                + " UTC)";
    }

    /** {@code 21 Jun 12:02–12:14 (10:02–10:14 UTC)}; days are named where they differ. */
    public String during(Window window) {
        if (isUtc(window.start()) && isUtc(window.end())) {
            return during(window, zone, null) + " UTC";
        }
        return during(window, zone, null) + " ("
                + during(window, ZoneOffset.UTC, window.start().atZone(zone).toLocalDate()) + " UTC)";
    }

    private boolean isUtc(Instant instant) {
        return zone.getRules().getOffset(instant).equals(ZoneOffset.UTC);
    }

    private static String during(Window window, ZoneId zone, LocalDate known) {
        DateTimeFormatter clock = clock(window.start(), window.end());
        LocalDate first = window.start().atZone(zone).toLocalDate();
        LocalDate last = window.end().atZone(zone).toLocalDate();
        return (first.equals(known) ? "" : DAY.format(first) + " ") + clock.format(window.start().atZone(zone)) + "–"
                + (last.equals(first) ? "" : DAY.format(last) + " ") + clock.format(window.end().atZone(zone));
    }

    private static DateTimeFormatter clock(Instant... instants) {
        for (Instant instant : instants) {
            if (instant.truncatedTo(ChronoUnit.SECONDS).getEpochSecond() % 60 != 0) {
                return SECOND;
            }
        }
        return MINUTE;
    }

    public String during(Instant start, Duration length) {
        return length.isZero() ? at(start) : during(Window.of(start, length));
    }

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** {@code 1 h 5 min}, {@code 4 min}, {@code 2 min 30 s}, {@code 20 s}; never rounded to nothing. */
    public static String length(Duration duration) {
        long s = Math.max(duration.toSeconds(), duration.isZero() ? 0 : 1);
        long hours = s / 3600;
        long minutes = s / 60 % 60;
        long seconds = hours > 0 ? 0 : s % 60;
        String text = (hours > 0 ? hours + " h " : "") + (minutes > 0 ? minutes + " min " : "")
                + (seconds > 0 ? seconds + " s" : "");
        return text.isEmpty() ? "0 min" : text.strip();
    }

    /** {@code 14 days}, {@code 2.25 days}. */
    public static String days(Duration duration) {
        double days = Math.round(duration.toMinutes() / 14.4) / 100.0;
        return (days == Math.rint(days) ? Long.toString((long) days) : Double.toString(days))
                + (days == 1 ? " day" : " days");
    }

    /** {@code the turn of team 1 (Skua) on Tern-1, 21 Jun 12:02–12:14 (10:02–10:14 UTC)}. */
    public String turn(Work work) {
        return "the turn of " + name(work.team()) + " on " + name(work.bird()) + ", " + during(work.window());
    }

    /** {@code the stop of team 1 (Skua) at Old pier, 21 Jun 12:00–13:00 (10:00–11:00 UTC)}. */
    public String stop(Stay stay) {
        return "the stop of " + name(stay.team()) + " at " + name(stay.site()) + ", " + during(stay.window());
    }

    public static String name(Team team) {
        String number = team.getNumber() > 0 ? "team " + team.getNumber() : "team";
        return blank(team.getName()) ? team.getNumber() > 0 ? number : "a team without a name"
                : number + " (" + InertText.line(team.getName()) + ")";
    }

    public static String name(Site site) {
        return blank(site.getName()) ? "a site without a name" : InertText.line(site.getName());
    }

    public static String name(Base base) {
        return blank(base.getName()) ? "a base without a name" : InertText.line(base.getName());
    }

    /** @param place a site or a base */
    public static String name(Identified place) {
        return place instanceof Site site ? name(site) : name((Base) place);
    }

    public static String name(Bird bird) {
        return blank(bird.getName()) ? "a bird without a name" : InertText.line(bird.getName());
    }

    public static String name(Jurisdiction place) {
        return blank(place.getName()) ? "a jurisdiction without a name" : InertText.line(place.getName());
    }

    public static String name(Operator operator) {
        return blank(operator.getName()) ? blank(operator.getCallSign()) ? "an operator without a name"
                : InertText.line(operator.getCallSign()) : InertText.line(operator.getName());
    }

    /** With a capital first letter. */
    public static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ENGLISH) + text.substring(1);
    }

    /** {@code A, B and C}. */
    public static String list(Collection<?> things) {
        List<String> words = things.stream().map(String::valueOf).collect(Collectors.toList());
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    public static String count(long number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }

    public static boolean blank(String text) {
        return text == null || text.isBlank();
    }

    public static String mhz(double frequencyMhz) {
        return String.format(Locale.ENGLISH, "%.3f", frequencyMhz);
    }
}
