package org.straddle.exchange.chasers;

import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.straddle.grid.Square;
import org.straddle.words.Catalogue;

/**
 * What one chaser asks for.
 *
 * @param callSign in capitals
 * @param locator  of four or six characters
 * @param squares  that they need, at least one
 */
public record Request(String callSign, String locator, SortedSet<Square> squares) {

    private static final Catalogue TEXTS = Catalogue.of(Request.class);

    /** Letters and digits, at least one of each, with parts before and after strokes; the ITU's rules are stricter. */
    private static final Pattern CALL = Pattern.compile("(?=[A-Z0-9/]*[A-Z])(?=[A-Z0-9/]*[0-9])[A-Z0-9]+(/[A-Z0-9]+){0,2}");
    private static final int LONGEST_CALL = 16;
    private static final Pattern LOCATOR = Pattern.compile("[A-R]{2}[0-9]{2}([A-X]{2})?");

    public Request {
        squares = new TreeSet<>(squares);
    }

    /**
     * @param words call sign, locator, squares
     * @throws IllegalArgumentException with a sentence that says what is wrong
     */
    static Request of(List<String> words) {
        if (words.size() < 3) {
            throw new IllegalArgumentException(TEXTS.text("request.short"));
        }
        String call = words.get(0).toUpperCase(Locale.ROOT);
        if (!CALL.matcher(call).matches() || call.length() > LONGEST_CALL) {
            throw new IllegalArgumentException(TEXTS.text("request.call", "word", shortened(words.get(0))));
        }
        String locator = words.get(1).toUpperCase(Locale.ROOT);
        if (!LOCATOR.matcher(locator).matches()) {
            throw new IllegalArgumentException(TEXTS.text("request.locator", "word", shortened(words.get(1))));
        }
        SortedSet<Square> squares = new TreeSet<>();
        for (String word : words.subList(2, words.size())) {
            try {
                squares.add(Square.parse(word.toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(TEXTS.text("request.square", "word", shortened(word)), e);
            }
        }
        return new Request(call, locator.substring(0, 4) + locator.substring(4).toLowerCase(Locale.ROOT), squares);
    }

    /** The same chaser with the squares of both, at home where the later one says. */
    Request and(Request later) {
        SortedSet<Square> both = new TreeSet<>(squares);
        both.addAll(later.squares);
        return new Request(callSign, later.locator, both);
    }

    private static String shortened(String word) {
        return word.length() <= 24 ? word : word.substring(0, 24) + "…";
    }
}
