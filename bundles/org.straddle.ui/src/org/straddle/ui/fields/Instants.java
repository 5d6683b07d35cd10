package org.straddle.ui.fields;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * A day and a time in UTC, such as {@code 2026-06-20 10:02}; the local time is told beside it. A trailing L gives a
 * local time instead, a time alone keeps the day.
 */
public final class Instants implements Notation<Instant> {

    private static final Catalogue TEXTS = Catalogue.of(Instants.class);

    private static final Pattern FORM = Pattern.compile(
            "(?:(\\d{4}-\\d{1,2}-\\d{1,2})[ T]+)?(\\d{1,2}):?(\\d{2})(?::(\\d{2}))? ?([ZzLl]|UTC)?");
    private static final DateTimeFormatter DATE =
            DateTimeFormatter.ofPattern("uuuu-M-d", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    private static final String EXAMPLE = TEXTS.text("instants.example");

    private final Supplier<ZoneId> zone;
    private final Supplier<Instant> present;

    /** @param present gives the day when only a time is typed; may give null */
    public Instants(Supplier<ZoneId> zone, Supplier<Instant> present) {
        this.zone = zone;
        this.present = present;
    }

    /** In the event's zone; a time alone means the event's first day. */
    public static Instants in(Event event) {
        return new Instants(() -> Outlook.zoneOf(event), () -> event.getFirstDay() == null ? null
                : event.getFirstDay().atTime(LocalTime.NOON).atZone(Outlook.zoneOf(event)).toInstant());
    }

    @Override
    public String print(Instant value) {
        return value == null ? "" : (value.getEpochSecond() % 60 == 0 ? MINUTES : SECONDS).format(value.atOffset(ZoneOffset.UTC));
    }

    @Override
    public Instant parse(String text) {
        if (text.isBlank()) {
            return null;
        }
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new IllegalArgumentException(EXAMPLE);
        }
        boolean local = "L".equalsIgnoreCase(form.group(5));
        ZoneId place = local ? zone.get() : ZoneOffset.UTC;
        try {
            LocalTime time = LocalTime.of(Integer.parseInt(form.group(2)), Integer.parseInt(form.group(3)),
                    form.group(4) == null ? 0 : Integer.parseInt(form.group(4)));
            return LocalDateTime.of(day(form.group(1), place), time).atZone(place).toInstant();
        } catch (DateTimeException impossible) {
            throw new IllegalArgumentException(TEXTS.text("instants.notime", "example", EXAMPLE), impossible);
        }
    }

    private LocalDate day(String typed, ZoneId place) {
        if (typed != null) {
            return LocalDate.parse(typed, DATE);
        }
        Instant now = present.get();
        if (now == null) {
            throw new IllegalArgumentException(TEXTS.text("instants.noday", "example", EXAMPLE));
        }
        return now.atZone(place).toLocalDate();
    }

    @Override
    public String told(Instant value) {
        return value == null ? "" : TEXTS.text("instants.told", "day", TimeText.of(zone.get()).weekday(value),
                "time", TimeText.of(zone.get()).clock(value), "zone", zone.get());
    }

    @Override
    public boolean tells() {
        return true;
    }
}
