package org.straddle.ui.daysheet.paint;

/** @param rgb 0xRRGGBB */
record Ink(int rgb) {

    int red() {
        return rgb >> 16 & 0xFF;
    }

    int green() {
        return rgb >> 8 & 0xFF;
    }

    int blue() {
        return rgb & 0xFF;
    }
}
