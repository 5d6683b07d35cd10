package org.straddle.grid;

import java.util.Locale;
import java.util.regex.Pattern;

import org.straddle.words.Catalogue;

/**
 * A Maidenhead locator of 2 to 10 characters: field (20° by 10°), square (2° by 1°), subsquare
 * (5′ by 2.5′), extended square (30″ by 15″) and its 24th parts (1.25″ by 0.625″).
 *
 * <p>Source: IARU Region 1 VHF handbook for the first three pairs; the fourth and fifth go on in the
 * same alternation of digits and letters.
 *
 * <p>Edges are half-open: a point on a line belongs to the area east or north of it. Two places no
 * published rule covers are decided here: latitude 90° belongs to the northernmost row, and longitude
 * 180° is the same meridian as -180°, so it belongs to field A.
 *
 * @param text field and square in capitals, further letters small; any case is accepted
 */
public record Locator(String text) {

    private static final Catalogue TEXTS = Catalogue.of(Locator.class);

    private static final Pattern FORM =
            Pattern.compile("[A-R]{2}(?:[0-9]{2}(?:[A-X]{2}(?:[0-9]{2}(?:[A-X]{2})?)?)?)?");

    /** How many times each pair of characters splits the area before it; the first splits the Earth. */
    private static final int[] SPLITS = {18, 10, 24, 10, 24};

    /** @throws IllegalArgumentException if the text is not a locator */
    public Locator {
        String capitals = text == null ? "" : text.strip().toUpperCase(Locale.ROOT);
        if (!FORM.matcher(capitals).matches()) {
            throw new IllegalArgumentException(TEXTS.text("locator.unreadable", "text", Quoted.shortened(text)));
        }
        text = capitals.length() <= 4 ? capitals
                : capitals.substring(0, 4) + capitals.substring(4).toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException if the text is not a locator */
    public static Locator parse(String text) {
        return new Locator(text);
    }

    /**
     * The locator of a place.
     *
     * @param characters 2, 4, 6, 8 or 10
     */
    public static Locator of(GeoPosition position, int characters) {
        if (characters < 2 || characters > 10 || characters % 2 != 0) {
            throw new IllegalArgumentException("A locator has 2, 4, 6, 8 or 10 characters, not " + characters + ".");
        }
        int pairs = characters / 2;
        int perTurn = partsPerTurn(pairs);
        int column = index(position.longitudeDeg(), perTurn, 360);
        int row = Math.min(index(position.latitudeDeg(), perTurn, 180), perTurn - 1);
        char[] letters = new char[characters];
        for (int pair = pairs - 1; pair >= 0; pair--) {
            char zero = pair % 2 == 1 ? '0' : 'A';
            letters[2 * pair] = (char) (zero + column % SPLITS[pair]);
            letters[2 * pair + 1] = (char) (zero + row % SPLITS[pair]);
            column /= SPLITS[pair];
            row /= SPLITS[pair];
        }
        return new Locator(new String(letters));
    }

    /** The area that bears this locator. */
    public GeoBounds bounds() {
        int pairs = text.length() / 2;
        int perTurn = partsPerTurn(pairs);
        int column = 0;
        int row = 0;
        for (int pair = 0; pair < pairs; pair++) {
            column = column * SPLITS[pair] + ordinal(text.charAt(2 * pair));
            row = row * SPLITS[pair] + ordinal(text.charAt(2 * pair + 1));
        }
        return new GeoBounds(edgeDeg(row, perTurn, 180), edgeDeg(column, perTurn, 360),
                edgeDeg(row + 1, perTurn, 180), edgeDeg(column + 1, perTurn, 360));
    }

    public GeoPosition centre() {
        return bounds().centre();
    }

    private static int ordinal(char letter) {
        return Character.isDigit(letter) ? letter - '0' : Character.toUpperCase(letter) - 'A';
    }

    private static int partsPerTurn(int pairs) {
        int parts = 1;
        for (int pair = 0; pair < pairs; pair++) {
            parts *= SPLITS[pair];
        }
        return parts;
    }

    /**
     * The edge before part number {@code index}, rounded once, so that the same edge is the same
     * number whatever the length of the locator.
     */
    private static double edgeDeg(int index, int parts, int rangeDeg) {
        return (index - parts / 2) * (long) rangeDeg / (double) parts;
    }

    /** The part that holds a value by the very edges that {@link #bounds()} reports. */
    private static int index(double degrees, int parts, int rangeDeg) {
        int index = (int) Math.floor((degrees + rangeDeg / 2.0) * parts / rangeDeg);
        while (index > 0 && degrees < edgeDeg(index, parts, rangeDeg)) {
            index--;
        }
        while (index < parts - 1 && degrees >= edgeDeg(index + 1, parts, rangeDeg)) {
            index++;
        }
        return index;
    }

    @Override
    public String toString() {
        return text;
    }
}
