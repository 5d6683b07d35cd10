package org.straddle.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.PluralRules;

class MessageTest {

    private static final Map<String, Object> VALUES = Map.of("site", "Old pier", "n", 1234, "one", 1, "none", 0, "worth", 2.25,
            "kind", "line");

    /** The outside check: ICU's own MessageFormat, on everything that texts may be made of. */
    @ParameterizedTest
    @ValueSource(strings = {"Plain.", "At {site}.", "{n, plural, one {# pass} other {# passes}} of {site}",
        "{one, plural, one {# pass} other {# passes}}", "{none, plural, =0 {no pass} one {# pass} other {# passes}}",
        "{n, plural, offset:1 one {it and # more} other {it and # more}}", "{worth, plural, one {# day} other {# days}}",
        "{kind, select, line {on the line} other {inside}} at {site}", "{site, select, x {a} other {{kind} of {n, number}}}",
        "{n, number} and {worth, number,0.000}", "don't say '{'site'}'", "'{literally}' {site}", "a # outside"})
    void isSaidAsByIcu(String text) {
        assertEquals(new MessageFormat(text, Locale.ENGLISH).format(VALUES), Message.print(text, Language.ENGLISH, VALUES));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 5, 21, 1000})
    void pluralsAreThoseOfIcuInEveryLanguage(int n) {
        assertEquals(PluralRules.forLocale(Locale.ENGLISH).select(n), PluralRule.in(Language.ENGLISH).select(n));
        String polish = "{n, plural, one {# a} few {# b} many {# c} other {# d}}";
        assertEquals(new MessageFormat(polish, Locale.forLanguageTag("pl")).format(Map.of("n", n)),
                Message.print(polish, Language.of("pl"), Map.of("n", n)));
    }

    @Test
    void aBareNumberIsNotGrouped() {
        assertEquals("bird 43700", Message.print("bird {n}", Language.ENGLISH, Map.of("n", 43700)));
    }

    @Test
    void lengthsDatesAndListsAreSaid() {
        assertEquals("1 h 5 min until 18 Jun 2027 for A, B and C", Message.print("{length} until {date} for {names}",
                Language.ENGLISH, Map.of("length", Duration.ofMinutes(65), "date", LocalDate.of(2027, 6, 18), "names",
                        List.of("A", "B", "C"))));
    }

    @Test
    void anInstantIsSaidInUtcWithItsYear() {
        assertEquals("at 1 Jan 1970 00:00 UTC", Message.print("at {when}", Language.ENGLISH, Map.of("when", Instant.EPOCH)));
    }

    @Test
    void argumentsAreFoundInEveryBranch() {
        assertEquals(Set.of("n", "site", "kind"),
                Message.arguments("{n, plural, one {# at {site}} other {# {kind, select, a {x} other {y}}}}"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"open {", "number {0}", "{when, date}", "{n, plural, one {#}}", "{n, selectordinal, other {#}}",
        "{n, choice, 0#no}", "{n, number, 0.0}"})
    void whatIsNoTextIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Message.arguments(text));
    }

    @Test
    void aMissingArgumentShowsItsName() {
        assertEquals("at {site}", Message.print("at {site}", Language.ENGLISH, Map.of()));
    }

    @Test
    void pseudoKeepsArgumentsAndVariables() {
        assertEquals("⟦1 ĥíť áť x ~~~~⟧",
                Message.print("{n, plural, one {# hit} other {# hits}} at {site}", Language.PSEUDO, Map.of("n", 1, "site", "x")));
        String options = Message.print("Default ${DEFAULT-VALUE}.%n", Language.PSEUDO, Map.of());
        assertTrue(options.contains("${DEFAULT-VALUE}") && options.contains("%n") && options.startsWith("⟦Ďéf"), options);
    }
}
