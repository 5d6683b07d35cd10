package org.straddle.daysheet.paint;

/** @param rgb 0xRRGGBB */
public record Ink(int rgb) {

    public int red() {
        return rgb >> 16 & 0xFF;
    }

    public int green() {
        return rgb >> 8 & 0xFF;
    }

    public int blue() {
        return rgb & 0xFF;
    }
}
