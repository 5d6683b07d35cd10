package org.straddle.check;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;
import org.straddle.words.FigureText;
import org.straddle.words.Language;
import org.straddle.words.LengthText;
import org.straddle.words.ListText;
import org.straddle.words.TimeText;

/**
 * One thing that a finding rests on. It can be said in any language ({@link #said}), and has one form that depends on no
 * language and on no name ({@link #plain}), which acceptances are held against.
 */
public sealed interface Fact {

    /**
     * A thing of the event, held by what it is called, so that a finding keeps no old copy of the event. What it is called
     * is no fact: an acceptance outlives a new name.
     */
    record Thing(String id, Naming.Called called) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return Naming.in(language).of(called);
        }

        @Override
        public String plain() {
            return id;
        }
    }

    record At(Instant instant) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return TimeText.of(zone).in(language).at(instant);
        }

        @Override
        public String plain() {
            return instant.toString();
        }
    }

    record During(Window window) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return TimeText.of(zone).in(language).during(window.start(), window.duration());
        }

        @Override
        public String plain() {
            return window.toString();
        }
    }

    /** A day, a count or a figure whose unit stands in the sentence, a truth, what somebody wrote, or the name of a square. */
    record Value(Object value) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return value;
        }

        @Override
        public String plain() {
            return String.valueOf(value);
        }
    }

    /** @param inDays whether it is said in days rather than in hours and minutes */
    record Length(Duration duration, boolean inDays) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return inDays ? LengthText.in(language).days(duration) : LengthText.in(language).of(duration);
        }

        @Override
        public String plain() {
            return duration.toString();
        }
    }

    /** Said to the kilohertz, without zeros at the end. */
    record Frequency(double mhz) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return FigureText.in(language).atMost(3, mhz);
        }

        @Override
        public String plain() {
            return Double.toString(mhz);
        }
    }

    /** A constant of the model, such as the kind of a site. */
    record Constant(Enumerator constant) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return Naming.in(language).constant(constant);
        }

        @Override
        public String plain() {
            return constant.getName();
        }
    }

    record Several(List<Fact> facts) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return ListText.in(language).and(facts.stream().map(fact -> fact.said(zone, language)).toList());
        }

        @Override
        public String plain() {
            return facts.stream().map(Fact::plain).collect(Collectors.joining(",", "[", "]"));
        }
    }

    /** A part of a sentence that has facts of its own. */
    record Part(Statement statement) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return statement.part(zone, language);
        }

        @Override
        public String plain() {
            return statement.plain();
        }
    }

    /** Words of another bundle, whose facts the finding rests on beside its sentence. */
    record Told(String words) implements Fact {

        @Override
        public Object said(ZoneId zone, Language language) {
            return words;
        }

        @Override
        public String plain() {
            return "";
        }
    }

    /** Said in a sentence: a text, or a number for its plural. */
    Object said(ZoneId zone, Language language);

    /** The same in every language, whatever things are called. */
    String plain();

    static Fact days(Duration length) {
        return new Length(length, true);
    }

    static Fact mhz(double mhz) {
        return new Frequency(mhz);
    }

    static Fact told(String words) {
        return new Told(words);
    }

    /** The fact that a value is. */
    static Fact of(Object value) {
        if (value instanceof Fact fact) {
            return fact;
        } else if (value instanceof Statement statement) {
            return new Part(statement);
        } else if (value instanceof Work work) {
            return new Part(Statement.of("turn", "team", work.team(), "bird", work.bird(), "during", work.window()));
        } else if (value instanceof Stay stay) {
            return new Part(Statement.of("stop", "team", stay.team(), "site", stay.site(), "during", stay.window()));
        } else if (value instanceof EObject thing) {
            return new Thing(thing instanceof Identified identified ? String.valueOf(identified.getId()) : thing.eClass().getName(),
                    Naming.Called.of(thing));
        } else if (value instanceof Instant instant) {
            return new At(instant);
        } else if (value instanceof Window window) {
            return new During(window);
        } else if (value instanceof Duration length) {
            return new Length(length, false);
        } else if (value instanceof LocalDate || value instanceof Number || value instanceof Boolean) {
            return new Value(value);
        } else if (value instanceof Enumerator constant) {
            return new Constant(constant);
        } else if (value instanceof Collection<?> several) {
            return new Several(several.stream().map(Fact::of).toList());
        }
        return new Value(String.valueOf(value));
    }
}
