package org.straddle.ui.sky.picture;

import org.straddle.drawing.Paper;

/**
 * The colours of the pictures, which are paper: light in every theme. None of them is the only mark of anything.
 */
final class Palette {

    static final int PAPER = Paper.WHITE;
    static final int INK = Paper.INK;
    static final int QUIET = Paper.QUIET;
    static final int LINE = Paper.LINE;
    static final int GRID = 0xCFDCE6;
    static final int SKY = 0xEEF5FA;
    static final int GROUND = 0xB9C3AC;
    static final int GROUND_EDGE = 0x5F6B51;
    static final int BIRD = Paper.BLUE;
    static final int SHADED = Paper.INK;
    static final int SUN = Paper.YELLOW;
    static final int UPLINK = Paper.VERMILLION;
    static final int WORKED = Paper.BLUISH_GREEN;
    /** A band below other lines. */
    static final int WORKED_BAND = Paper.tint(WORKED, 0.45);

    private Palette() {
    }
}
