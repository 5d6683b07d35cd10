package org.straddle.daysheet.paint;

import org.straddle.check.Severity;
import org.straddle.daysheet.sheet.Light;
import org.straddle.drawing.Paper;

/**
 * The colours of the sheet, which is paper: light in every theme. None of them is the only mark of anything.
 */
final class Palette {

    static final int PAPER = Paper.WHITE;
    static final int HEAD = 0xF4F6F8;
    static final int INK = Paper.INK;
    static final int QUIET = Paper.QUIET;
    static final int LINE = Paper.LINE;
    static final int GRID = 0xDDE3E8;
    static final int TROUBLE = Paper.VERMILLION;
    /** Bluish green. */
    static final int FITS = Paper.BLUISH_GREEN;
    static final int CHOSEN = 0x000000;
    static final int GLOW = Paper.YELLOW;
    static final int DAY = 0xFFFDF5;
    static final int TWILIGHT = 0xE9EDF4;
    static final int TWILIGHT_LINE = 0xD3DBE7;
    static final int DARK = 0xC4CDDA;
    static final int DARK_LINE = 0xAAB6C7;

    private Palette() {
    }

    static int of(Severity severity) {
        return switch (severity) {
            case BLOCKER -> Paper.VERMILLION;
            case WARNING -> Paper.ORANGE;
            case ADVICE -> Paper.BLUE;
        };
    }

    static int of(Light.State state) {
        return switch (state) {
            case DAY -> DAY;
            case TWILIGHT -> TWILIGHT;
            case DARK -> DARK;
        };
    }
}
