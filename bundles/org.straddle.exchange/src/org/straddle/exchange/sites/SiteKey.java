package org.straddle.exchange.sites;

import java.util.Locale;

import org.straddle.words.Catalogue;

/**
 * How one knows which site of the event a line of a table is about.
 *
 * @param kind    by what
 * @param withinM for {@link Kind#POSITION}: the site's mark lies no farther than this from the position, metres
 */
public record SiteKey(Kind kind, double withinM) {

    private static final Catalogue TEXTS = Catalogue.of(SiteKey.class);

    /** By what a site is known. */
    public enum Kind { NAME, ID, POSITION }

    /** Farther apart, two positions are two places. */
    public static final double FARTHEST_M = 10_000;

    public static final SiteKey NAME = new SiteKey(Kind.NAME, 0);
    public static final SiteKey ID = new SiteKey(Kind.ID, 0);

    /** @throws IllegalArgumentException with a sentence for the user if the distance is out of range */
    public SiteKey {
        if (kind == Kind.POSITION && !(withinM > 0 && withinM <= FARTHEST_M)) {
            throw new IllegalArgumentException(TEXTS.text("siteKey.distance", "withinM", withinM, "mostM", FARTHEST_M));
        }
    }

    public static SiteKey within(double metres) {
        return new SiteKey(Kind.POSITION, metres);
    }

    /**
     * Reads {@code name}, {@code id}, or a number of metres.
     *
     * @throws IllegalArgumentException with a sentence for the user if it is none of them
     */
    public static SiteKey parse(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "name" -> NAME;
            case "id" -> ID;
            default -> {
                if (!text.strip().matches("\\d{1,6}(\\.\\d{1,6})?")) {
                    throw new IllegalArgumentException(TEXTS.text("siteKey.unreadable", "text", text));
                }
                yield within(Double.parseDouble(text.strip()));
            }
        };
    }
}
