package org.straddle.drawing;

/**
 * One line of text with its middle at a point.
 *
 * @param x of its middle, pixels
 * @param y of its middle, pixels
 * @param rgb 0xRRGGBB
 * @param paperRgb of a ground behind the letters that keeps them readable; -1 for none
 */
public record Words(String text, float x, float y, Face face, int rgb, int paperRgb) implements Mark {

    @Override
    public void draw(Pen pen) {
        pen.write(this);
    }
}
