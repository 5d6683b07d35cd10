package org.straddle.ui.daysheet.paint;

import org.eclipse.swt.graphics.Color;
import org.straddle.check.Severity;
import org.straddle.ui.daysheet.sheet.Light;

/**
 * The colours of the sheet, which is paper: light in every theme. None of them is the only mark of anything. Saturated
 * ones are from the colour-blind-safe set of Okabe and Ito (Color Universal Design, 2002).
 */
final class Palette {

    static final Color PAPER = rgb(0xFFFFFF);
    static final Color HEAD = rgb(0xF4F6F8);
    static final Color INK = rgb(0x1E2A35);
    static final Color QUIET = rgb(0x56646F);
    static final Color LINE = rgb(0xC3CCD4);
    static final Color GRID = rgb(0xDDE3E8);
    static final Color TROUBLE = rgb(0xD55E00);
    /** Bluish green. */
    static final Color LEGAL = rgb(0x009E73);
    static final Color CHOSEN = rgb(0x000000);
    static final Color GLOW = rgb(0xF0E442);
    static final Color DAY = rgb(0xFFFDF5);
    static final Color TWILIGHT = rgb(0xE9EDF4);
    static final Color TWILIGHT_LINE = rgb(0xD3DBE7);
    static final Color DARK = rgb(0xC4CDDA);
    static final Color DARK_LINE = rgb(0xAAB6C7);

    private Palette() {
    }

    static Color rgb(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** The colour mixed with white: part 1 is the colour, 0 is white. */
    static Color tint(int rgb, double part) {
        return new Color(mixed(rgb >> 16 & 0xFF, part), mixed(rgb >> 8 & 0xFF, part), mixed(rgb & 0xFF, part));
    }

    static Color of(Severity severity) {
        return switch (severity) {
            case BLOCKER -> rgb(0xD55E00);
            case WARNING -> rgb(0xE69F00);
            case ADVICE -> rgb(0x0072B2);
        };
    }

    static Color of(Light.State state) {
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
