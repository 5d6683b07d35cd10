package org.straddle.drawing;

import java.util.HexFormat;

import org.straddle.words.Catalogue;

/**
 * What a team is known by on every sheet and view: its number, a pattern and a colour, so that it is told apart in
 * black and white and by people who see colours differently. Marks repeat from the 29th team on.
 *
 * @param number the team's number
 * @param pattern drawn in black over the colour
 * @param colour from the colour-blind-proof set
 */
public record TeamMark(int number, Pattern pattern, Colour colour) {

    private static final Catalogue TEXTS = Catalogue.of(TeamMark.class);

    /** Patterns that stay apart at small size. */
    public enum Pattern {
        PLAIN, RISING, LEVEL, DOTS;

        /** The word to print. */
        public String label() {
            return TEXTS.text(this);
        }
    }

    /**
     * The set by Okabe and Ito (see {@link Paper}) without black, which the patterns use; in an order that keeps
     * neighbours apart.
     */
    public enum Colour {
        ORANGE(Paper.ORANGE), SKY_BLUE(Paper.SKY_BLUE), BLUISH_GREEN(Paper.BLUISH_GREEN),
        YELLOW(Paper.YELLOW), BLUE(Paper.BLUE), VERMILLION(Paper.VERMILLION),
        REDDISH_PURPLE(Paper.REDDISH_PURPLE);

        private final int rgb;

        Colour(int rgb) {
            this.rgb = rgb;
        }

        /** The word to print. */
        public String label() {
            return TEXTS.text(this);
        }

        /** 0xRRGGBB. */
        public int rgb() {
            return rgb;
        }

        /** {@code #RRGGBB}. */
        public String hex() {
            return "#" + HexFormat.of().withUpperCase().toHexDigits(rgb, 6);
        }
    }

    /** @param number as the team has it; 0 and below are given the mark of 1 and keep their number */
    public static TeamMark of(int number) {
        int place = Math.max(0, number - 1);
        Pattern[] patterns = Pattern.values();
        Colour[] colours = Colour.values();
        return new TeamMark(number, patterns[place % patterns.length], colours[place % colours.length]);
    }

    /** 0xRRGGBB. */
    public int rgb() {
        return colour.rgb();
    }

    /** {@code 2, rising stripes, sky blue}. */
    public String words() {
        return TEXTS.text("mark", "number", number, "pattern", pattern.label(), "colour", colour.label());
    }
}
