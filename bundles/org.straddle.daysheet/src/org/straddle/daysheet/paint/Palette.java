package org.straddle.daysheet.paint;

import org.straddle.check.Severity;
import org.straddle.daysheet.sheet.Light;

/**
 * The colours of the sheet, which is paper: light in every theme. None of them is the only mark of anything. Saturated
 * ones are from the colour-blind-safe set of Okabe and Ito (Color Universal Design, 2002).
 */
final class Palette {

    static final Ink PAPER = rgb(0xFFFFFF);
    static final Ink HEAD = rgb(0xF4F6F8);
    static final Ink INK = rgb(0x1E2A35);
    static final Ink QUIET = rgb(0x56646F);
    static final Ink LINE = rgb(0xC3CCD4);
    static final Ink GRID = rgb(0xDDE3E8);
    static final Ink TROUBLE = rgb(0xD55E00);
    /** Bluish green. */
    static final Ink FITS = rgb(0x009E73);
    static final Ink CHOSEN = rgb(0x000000);
    static final Ink GLOW = rgb(0xF0E442);
    static final Ink DAY = rgb(0xFFFDF5);
    static final Ink TWILIGHT = rgb(0xE9EDF4);
    static final Ink TWILIGHT_LINE = rgb(0xD3DBE7);
    static final Ink DARK = rgb(0xC4CDDA);
    static final Ink DARK_LINE = rgb(0xAAB6C7);

    private Palette() {
    }

    static Ink rgb(int rgb) {
        return new Ink(rgb);
    }

    /** The colour mixed with white: part 1 is the colour, 0 is white. */
    static Ink tint(int rgb, double part) {
        Ink whole = new Ink(rgb);
        return new Ink(mixed(whole.red(), part) << 16 | mixed(whole.green(), part) << 8 | mixed(whole.blue(), part));
    }

    static Ink of(Severity severity) {
        return switch (severity) {
            case BLOCKER -> rgb(0xD55E00);
            case WARNING -> rgb(0xE69F00);
            case ADVICE -> rgb(0x0072B2);
        };
    }

    static Ink of(Light.State state) {
        return switch (state) {
            case DAY -> DAY;
            case TWILIGHT -> TWILIGHT;
            case DARK -> DARK;
        };
    }

    private static int mixed(int channel, double part) {
        return (int) Math.round(255 + (channel - 255) * part);
    }
}
