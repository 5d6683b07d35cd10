package org.straddle.drawing;

/**
 * How a line looks.
 *
 * @param rgb 0xRRGGBB
 * @param widthPx pixels
 */
public record Stroke(int rgb, double widthPx, Dash dash) {

    /** Lines that can be told apart without colour; lengths of line and gap in turn, pixels. */
    public enum Dash {
        SOLID, DASHED(9, 4), LONG_SHORT(10, 3, 2, 3), DOTTED(2, 3);

        private final float[] lengths;

        Dash(float... lengths) {
            this.lengths = lengths;
        }

        /** Empty for a line without gaps. */
        public float[] lengths() {
            return lengths.clone();
        }
    }

    public static Stroke solid(int rgb, double widthPx) {
        return new Stroke(rgb, widthPx, Dash.SOLID);
    }
}
