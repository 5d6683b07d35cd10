package org.straddle.ui.sky.picture;

import org.eclipse.swt.graphics.Color;
import org.straddle.drawing.Paper;

/**
 * The colours of the pictures, which are paper: light in every theme. None of them is the only mark of anything.
 */
final class Palette {

    static final Color PAPER = rgb(Paper.WHITE);
    static final Color INK = rgb(Paper.INK);
    static final Color QUIET = rgb(Paper.QUIET);
    static final Color LINE = rgb(Paper.LINE);
    static final Color GRID = rgb(0xCFDCE6);
    static final Color SKY = rgb(0xEEF5FA);
    static final Color GROUND = rgb(0xB9C3AC);
    static final Color GROUND_EDGE = rgb(0x5F6B51);
    static final Color BIRD = rgb(Paper.BLUE);
    static final Color SHADED = rgb(Paper.INK);
    static final Color SUN = rgb(Paper.YELLOW);
    static final Color UPLINK = rgb(Paper.VERMILLION);
    static final Color WORKED = rgb(Paper.BLUISH_GREEN);

    private Palette() {
    }

    private static Color rgb(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }
}
