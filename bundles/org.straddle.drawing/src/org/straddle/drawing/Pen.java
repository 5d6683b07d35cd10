package org.straddle.drawing;

import java.util.List;

/** Draws on a screen, a picture or a page. Coordinates are pixels, x to the right and y down. */
public interface Pen {

    /**
     * Fills what an odd number of rings surrounds.
     *
     * @param rings x and y in turn, closed
     * @param rgb 0xRRGGBB
     * @param opacity 0 to 1
     */
    void fill(List<float[]> rings, int rgb, double opacity);

    /** @param lines x and y in turn */
    void stroke(List<float[]> lines, Stroke stroke);

    void write(Words words);

    /** Where drawing leaves traces. */
    Frame clip();

    /** Leaves everything outside the box alone while drawing; boxes within boxes are cut by each. */
    void within(Frame box, Runnable drawing);
}
