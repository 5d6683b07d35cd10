package org.straddle.ui.sky.pass;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

import org.straddle.words.Catalogue;

/**
 * The step in which times are shown: no finer than they are known. A time that is good to 3 s is rounded to 5 s.
 *
 * @param step 1 s to 1 h
 */
public record TimeGrain(Duration step) {

    private static final Catalogue TEXTS = Catalogue.of(TimeGrain.class);

    private static final List<Integer> STEPS_S = List.of(1, 2, 5, 10, 30, 60, 300, 600, 1800, 3600);
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

    /** @param errorS how far a time may be off, seconds */
    public static TimeGrain of(double errorS) {
        return new TimeGrain(Duration.ofSeconds(STEPS_S.stream().filter(step -> step >= errorS).findFirst()
                .orElse(STEPS_S.get(STEPS_S.size() - 1))));
    }

    public String utc(Instant instant) {
        return local(instant, ZoneOffset.UTC);
    }

    public String local(Instant instant, ZoneId zone) {
        return (step.toSeconds() < 60 ? SECONDS : MINUTES).format(rounded(instant).atZone(zone));
    }

    public Instant rounded(Instant instant) {
        long stepMs = step.toMillis();
        return Instant.ofEpochMilli(Math.floorDiv(instant.toEpochMilli() + stepMs / 2, stepMs) * stepMs);
    }

    /** {@code 11 min 50 s}, rounded like the times. */
    public String words(Duration duration) {
        long seconds = Math.round((double) duration.toMillis() / step.toMillis()) * step.toSeconds();
        long hours = seconds / 3600;
        boolean fine = step.toSeconds() < 60 && hours == 0;
        return TEXTS.text("grain.length", "long", hours > 0, "hours", hours, "minutes", seconds / 60 % 60, "fine", fine,
                "seconds", seconds % 60);
    }
}
