package org.straddle.terrain;

import java.awt.geom.AffineTransform;

/**
 * Heights over a part of a raster, held in memory. Between the centres of four cells the height is bilinear; where
 * some of the four are void the highest of the others counts, so that the rim of a void hides no ridge.
 */
final class HeightGrid {

    private final int width;
    private final int height;
    private final float[] metres;
    private final AffineTransform toCell;

    /**
     * @param metres row by row; NaN where there is no height
     * @param toCell from positions in the raster's own system to columns and rows of this grid, whole numbers at the
     *     centres of cells
     */
    HeightGrid(int width, int height, float[] metres, AffineTransform toCell) {
        if (metres.length != width * height) {
            throw new IllegalArgumentException(metres.length + " heights do not fill " + width + " × " + height);
        }
        this.width = width;
        this.height = height;
        this.metres = metres;
        this.toCell = toCell;
    }

    /** Height at a position in the raster's own system, metres; NaN outside and in voids. */
    double heightM(double x, double y) {
        double column = toCell.getScaleX() * x + toCell.getShearX() * y + toCell.getTranslateX();
        double row = toCell.getShearY() * x + toCell.getScaleY() * y + toCell.getTranslateY();
        // Half a cell beyond the outermost centres still belongs to their cells.
        if (metres.length == 0 || !(column >= -0.5 && row >= -0.5 && column <= width - 0.5 && row <= height - 0.5)) {
            return Double.NaN;
        }
        double inColumn = Math.max(0, Math.min(width - 1, column));
        double inRow = Math.max(0, Math.min(height - 1, row));
        int left = Math.min((int) inColumn, Math.max(0, width - 2));
        int top = Math.min((int) inRow, Math.max(0, height - 2));
        int right = Math.min(left + 1, width - 1);
        int bottom = Math.min(top + 1, height - 1);
        double east = inColumn - left;
        double south = inRow - top;
        double a = metres[top * width + left];
        double b = metres[top * width + right];
        double c = metres[bottom * width + left];
        double d = metres[bottom * width + right];
        double between = (a * (1 - east) + b * east) * (1 - south) + (c * (1 - east) + d * east) * south;
        return Double.isNaN(between) ? highest(highest(a, b), highest(c, d)) : between;
    }

    private static double highest(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }
}
