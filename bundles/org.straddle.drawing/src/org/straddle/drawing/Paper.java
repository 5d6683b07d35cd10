package org.straddle.drawing;

/**
 * The colours that all drawings share, 0xRRGGBB. Drawings are paper, light in every theme, and no colour is the only
 * mark of anything. Saturated ones are the set by M. Okabe and K. Ito, "Color Universal Design" (2008), which people
 * who see colours differently can tell apart.
 */
public final class Paper {

    public static final int WHITE = 0xFFFFFF;
    public static final int INK = 0x1E2A35;
    public static final int QUIET = 0x56646F;
    public static final int LINE = 0xC3CCD4;

    public static final int ORANGE = 0xE69F00;
    public static final int SKY_BLUE = 0x56B4E9;
    public static final int BLUISH_GREEN = 0x009E73;
    public static final int YELLOW = 0xF0E442;
    public static final int BLUE = 0x0072B2;
    public static final int VERMILLION = 0xD55E00;
    public static final int REDDISH_PURPLE = 0xCC79A7;

    private Paper() {
    }

    /** The colour mixed with white: part 1 is the colour, 0 is white. */
    public static int tint(int rgb, double part) {
        return mixed(rgb >> 16 & 0xFF, part) << 16 | mixed(rgb >> 8 & 0xFF, part) << 8 | mixed(rgb & 0xFF, part);
    }

    private static int mixed(int channel, double part) {
        return (int) Math.round(255 + (channel - 255) * part);
    }
}
