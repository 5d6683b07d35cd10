package org.straddle.check;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import org.straddle.words.Catalogue;
import org.straddle.words.Language;
import org.straddle.words.Sentence;

/**
 * What is said of an event, as facts: the sentence is made of them last, in any language, from the catalogue of this
 * package.
 *
 * @param key   of the sentence in the catalogue; empty for words that somebody else chose, which are the one fact
 * @param facts by their names in the sentence
 * @param zone  in which times are said
 */
public record Statement(String key, Map<String, Fact> facts, ZoneId zone) {

    private static final Catalogue TEXTS = Catalogue.of(Statement.class);
    private static final String WORDS = "words";

    /** @param namesAndValues name, value, name, value …; see {@link Fact#of} for what values may be */
    public static Statement of(String key, Object... namesAndValues) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
            facts.put((String) namesAndValues[i], Fact.of(namesAndValues[i + 1]));
        }
        return new Statement(key, facts, ZoneOffset.UTC);
    }

    /** A sentence that stands already, such as the conditions of a review. */
    public static Statement words(String sentence) {
        return new Statement("", Map.of(WORDS, new Fact.Value(sentence)), ZoneOffset.UTC);
    }

    /** The same with times said in a zone. */
    public Statement in(ZoneId other) {
        return other.equals(zone) ? this : new Statement(key, facts, other);
    }

    /** The whole sentence, in the language chosen at the start. */
    public String sentence() {
        return sentenceIn(Language.current());
    }

    /** The whole sentence, which begins with a capital. */
    public String sentenceIn(Language language) {
        return Sentence.begun(part(zone, language), language.locale());
    }

    /** The same within another sentence. */
    String part(ZoneId in, Language language) {
        Map<String, Object> said = new HashMap<>();
        facts.forEach((name, fact) -> said.put(name, fact.said(in, language)));
        return key.isEmpty() ? String.valueOf(said.get(WORDS)) : TEXTS.in(language).text(key, said);
    }

    /** Key and facts, the same in every language. */
    String plain() {
        StringBuilder plain = new StringBuilder(key);
        facts.forEach((name, fact) -> plain.append('\n').append(name).append('=').append(fact.plain()));
        return plain.toString();
    }
}
