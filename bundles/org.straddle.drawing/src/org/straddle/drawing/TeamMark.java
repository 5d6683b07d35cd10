package org.straddle.drawing;

/**
 * What a team is known by on every sheet and view: its number, a pattern and a colour, so that it is told apart in
 * black and white and by people who see colours differently. Marks repeat from the 29th team on.
 *
 * @param number the team's number
 * @param pattern drawn in black over the colour
 * @param colour from the colour-blind-proof set
 */
public record TeamMark(int number, Pattern pattern, Colour colour) {

    /** Patterns that stay apart at small size. */
    public enum Pattern {
        PLAIN("plain"), RISING("rising stripes"), LEVEL("level stripes"), DOTS("dots");

        private final String label;

        Pattern(String label) {
            this.label = label;
        }

        /** The word to print. */
        public String label() {
            return label;
        }
    }

    /**
     * The set by Okabe and Ito (see {@link Paper}) without black, which the patterns use; in an order that keeps
     * neighbours apart.
     */
    public enum Colour {
        ORANGE("orange", Paper.ORANGE), SKY_BLUE("sky blue", Paper.SKY_BLUE), BLUISH_GREEN("bluish green", Paper.BLUISH_GREEN),
        YELLOW("yellow", Paper.YELLOW), BLUE("blue", Paper.BLUE), VERMILLION("vermillion", Paper.VERMILLION),
        REDDISH_PURPLE("reddish purple", Paper.REDDISH_PURPLE);

        private final String label;
        private final int rgb;

        Colour(String label, int rgb) {
            this.label = label;
            this.rgb = rgb;
        }

        /** The word to print. */
        public String label() {
            return label;
        }

        /** 0xRRGGBB. */
        public int rgb() {
            return rgb;
        }

        /** {@code #RRGGBB}. */
        public String hex() {
            return "#%06X".formatted(rgb);
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
        return number + ", " + pattern.label() + ", " + colour.label();
    }
}
