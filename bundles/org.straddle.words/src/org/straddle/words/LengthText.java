package org.straddle.words;

import java.time.Duration;
import java.util.StringJoiner;

/** How long something lasts. */
public final class LengthText {

    private final Catalogue texts;

    private LengthText(Language language) {
        texts = Catalogue.of(LengthText.class).in(language);
    }

    /** In the language chosen at the start. */
    public static LengthText inCurrent() {
        return new LengthText(Language.current());
    }

    public static LengthText in(Language language) {
        return new LengthText(language);
    }

    /** {@code 1 h 5 min}, {@code 4 min}, {@code 2 min 30 s}, {@code 20 s}; never rounded to nothing. */
    public String of(Duration length) {
        long s = Math.max(length.toSeconds(), length.isZero() ? 0 : 1);
        long hours = s / 3600;
        long minutes = s / 60 % 60;
        long seconds = hours > 0 ? 0 : s % 60;
        StringJoiner text = new StringJoiner(" ");
        if (hours > 0) {
            text.add(texts.text("length.hours", "hours", hours));
        }
        if (minutes > 0 || hours + seconds == 0) {
            text.add(texts.text("length.minutes", "minutes", minutes));
        }
        if (seconds > 0) {
            text.add(texts.text("length.seconds", "seconds", seconds));
        }
        return text.toString();
    }

    /** To the nearest minute: {@code 95 min}, {@code 2 h 5 min}; hours from two on. */
    public String minutes(Duration length) {
        long minutes = Math.round(length.toSeconds() / 60.0);
        return minutes < 120 ? texts.text("length.minutes", "minutes", minutes) : of(Duration.ofMinutes(minutes));
    }

    /** {@code 14 days}, {@code 2.25 days}. */
    public String days(Duration length) {
        return texts.text("length.days", "days", Math.round(length.toMinutes() / 14.4) / 100.0);
    }
}
