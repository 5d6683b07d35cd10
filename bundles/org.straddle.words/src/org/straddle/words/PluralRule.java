package org.straddle.words;

import java.text.ParseException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import com.ibm.icu.text.PluralRules;

/**
 * Which form of a plural a number takes. ICU knows the rules of every language; that of English is written here as the
 * Unicode CLDR has it, because to load ICU's data takes a quarter of a second of every start. A test compares the two.
 */
final class PluralRule {

    static final String ENGLISH = "one: i = 1 and v = 0";

    private static final Map<String, PluralRules> KNOWN = new ConcurrentHashMap<>();

    private PluralRule() {
    }

    static PluralRules in(Language language) {
        return KNOWN.computeIfAbsent(language.tag(), tag -> language.isEnglish() ? english()
                : PluralRules.forLocale(language.locale()));
    }

    private static PluralRules english() {
        try {
            return PluralRules.parseDescription(ENGLISH);
        } catch (ParseException e) {
            throw new IllegalStateException(e);
        }
    }
}
