package org.straddle.publish;

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
     * The set by M. Okabe and K. Ito, "Color Universal Design" (2008), without black, which the patterns use; in an
     * order that keeps neighbours apart.
     */
    public enum Colour {
        ORANGE("orange", "#E69F00"), SKY_BLUE("sky blue", "#56B4E9"), BLUISH_GREEN("bluish green", "#009E73"),
        YELLOW("yellow", "#F0E442"), BLUE("blue", "#0072B2"), VERMILLION("vermillion", "#D55E00"),
        REDDISH_PURPLE("reddish purple", "#CC79A7");

        private final String label;
        private final String hex;

        Colour(String label, String hex) {
            this.label = label;
            this.hex = hex;
        }

        /** The word to print. */
        public String label() {
            return label;
        }

        /** {@code #RRGGBB}. */
        public String hex() {
            return hex;
        }
    }

    /** @param number as the team has it; 0 and below are given the mark of 1 and keep their number */
    public static TeamMark of(int number) {
        int place = Math.max(0, number - 1);
        Pattern[] patterns = Pattern.values();
        Colour[] colours = Colour.values();
        return new TeamMark(number, patterns[place % patterns.length], colours[place % colours.length]);
    }

    /** {@code 2, rising stripes, sky blue}. */
    public String words() {
        return number + ", " + pattern.label() + ", " + colour.label();
    }
}
