package org.straddle.words;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One text of a catalogue, ready to be said. The format is that of ICU's {@code MessageFormat} with named arguments:
 * {@code {site}}, {@code {count, plural, one {# pass} other {# passes}}}, {@code {kind, select, line {…} other {…}}} and
 * {@code {worth, number,0.000}} (without a blank before the form, which would be printed).
 *
 * <p>Values may be texts, numbers, {@link Duration}s (said by {@link LengthText}), {@link LocalDate}s (by
 * {@link DateText}), lists (by {@link ListText}) and anything with a good {@code toString}. A bare {@code {number}} is
 * printed without grouping, because it may be a number of a team or a bird; {@code {number, number}} and {@code #} group.
 * An {@link Instant} is said in UTC with its year; where the zone of an event is known, {@link TimeText} says it.
 */
public abstract class Message {

    /** A text without arguments, or with plain ones only, needs no ICU: it takes a tenth of a second to load. */
    static Message of(String text, Language language) {
        if (text.indexOf('{') < 0 || text.contains("${")) {
            return new PlainMessage(language.pseudo() ? Pseudo.whole(Pseudo.accented(text)) : text);
        }
        return new PatternMessage(text, language);
    }

    /**
     * The names of the arguments of a text.
     *
     * @throws IllegalArgumentException saying what is wrong, when it is no text of this format
     */
    public static SortedSet<String> arguments(String text) {
        SortedSet<String> names = new TreeSet<>();
        if (Message.of(text, Language.ENGLISH) instanceof PatternMessage pattern) {
            pattern.collectArguments(names);
        }
        return names;
    }

    /** The text of a message in a language, without a catalogue around it. */
    public static String print(String text, Language language, Map<String, ?> arguments) {
        return of(text, language).print(arguments);
    }

    abstract String print(Map<String, ?> arguments);

    static String say(Object value, Language language) {
        if (value instanceof Instant instant) {
            return TimeText.utc().in(language).whole(instant);
        } else if (value instanceof Duration length) {
            return LengthText.in(language).of(length);
        } else if (value instanceof LocalDate date) {
            return DateText.in(language).of(date);
        } else if (value instanceof Collection<?> list) {
            return ListText.in(language).and(list);
        }
        return String.valueOf(value);
    }

    private static final class PlainMessage extends Message {

        private final String text;

        PlainMessage(String text) {
            this.text = text;
        }

        @Override
        String print(Map<String, ?> arguments) {
            return text;
        }
    }
}
