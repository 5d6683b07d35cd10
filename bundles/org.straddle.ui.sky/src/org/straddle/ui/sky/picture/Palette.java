package org.straddle.ui.sky.picture;

import org.eclipse.swt.graphics.Color;

/**
 * The colours of the pictures, which are paper: light in every theme. None of them is the only mark of anything.
 * Saturated ones are from the colour-blind-safe set of Okabe and Ito (Color Universal Design, 2002).
 */
final class Palette {

    static final Color PAPER = rgb(0xFFFFFF);
    static final Color INK = rgb(0x1E2A35);
    static final Color QUIET = rgb(0x56646F);
    static final Color LINE = rgb(0xC3CCD4);
    static final Color GRID = rgb(0xCFDCE6);
    static final Color SKY = rgb(0xEEF5FA);
    static final Color GROUND = rgb(0xB9C3AC);
    static final Color GROUND_EDGE = rgb(0x5F6B51);
    static final Color BIRD = rgb(0x0072B2);
    static final Color SHADED = rgb(0x1E2A35);
    static final Color SUN = rgb(0xF0E442);
    static final Color UPLINK = rgb(0xD55E00);
    static final Color WORKED = rgb(0x009E73);

    private Palette() {
    }

    private static Color rgb(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }
}
