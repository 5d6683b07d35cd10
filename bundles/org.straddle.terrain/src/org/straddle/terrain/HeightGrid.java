package org.straddle.terrain;

import java.awt.geom.AffineTransform;
import java.util.Arrays;

/**
 * Heights over a part of a raster, held in memory. Between the centres of four cells the height is bilinear; where
 * some of the four are void the highest of the others counts, so that the rim of a void hides no ridge.
 *
 * <p>For places far away there are coarser grids, each of half the cells in each direction, where a cell holds the highest
 * of four (a pyramid of maxima; Tanimoto and Pavlidis 1975, with their means replaced by maxima).
 */
final class HeightGrid {

    private final int width;
    private final int height;
    private final float[] metres;
    private final AffineTransform toCell;
    /** Made when first asked for, by the one thread that looks around; its own transform is never used. */
    private HeightGrid half;

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
        // Half a cell beyond the outermost centres still belongs to their cells.
        if (!covers(x, y)) {
            return Double.NaN;
        }
        double column = column(x, y);
        double row = row(x, y);
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

    /** Whether a position in the raster's own system is over this part of the raster, voids included. */
    boolean covers(double x, double y) {
        double column = column(x, y);
        double row = row(x, y);
        return metres.length > 0 && column >= -0.5 && row >= -0.5 && column <= width - 0.5 && row <= height - 0.5;
    }

    /** How far a position is outside, in lengths of the raster's own system along each of its axes; 0 where it is within. */
    double[] outside(double x, double y) {
        if (metres.length == 0) {
            return new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        }
        double column = column(x, y);
        double row = row(x, y);
        double columns = Math.max(0, Math.max(-0.5 - column, column - (width - 0.5)));
        double rows = Math.max(0, Math.max(-0.5 - row, row - (height - 0.5)));
        return new double[] {columns / Math.hypot(toCell.getScaleX(), toCell.getShearX()),
            rows / Math.hypot(toCell.getScaleY(), toCell.getShearY())};
    }

    /**
     * The highest of the four cells of a coarser grid that lie around a position: of every cell of this grid within half
     * a coarse cell of it, and of none farther away than one and a half in each direction.
     *
     * @param halvings how often the cells of this grid are doubled, above 0
     * @return metres; NaN outside and where all is void
     */
    double highestNearM(double x, double y, int halvings) {
        if (!covers(x, y)) {
            return Double.NaN;
        }
        HeightGrid coarse = halved(halvings);
        double cells = 1L << halvings;
        int left = (int) Math.floor((column(x, y) + 0.5) / cells - 0.5);
        int top = (int) Math.floor((row(x, y) + 0.5) / cells - 0.5);
        return highest(highest(coarse.cell(left, top), coarse.cell(left + 1, top)),
                highest(coarse.cell(left, top + 1), coarse.cell(left + 1, top + 1)));
    }

    private double cell(int column, int row) {
        return column < 0 || row < 0 || column >= width || row >= height ? Double.NaN : metres[row * width + column];
    }

    private HeightGrid halved(int times) {
        HeightGrid grid = this;
        for (int i = 0; i < times; i++) {
            if (grid.half == null) {
                grid.half = grid.half();
            }
            grid = grid.half;
        }
        return grid;
    }

    private HeightGrid half() {
        int columns = (width + 1) / 2;
        int rows = (height + 1) / 2;
        float[] highest = new float[columns * rows];
        Arrays.fill(highest, Float.NaN);
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                int into = row / 2 * columns + column / 2;
                highest[into] = (float) highest(highest[into], metres[row * width + column]);
            }
        }
        return new HeightGrid(columns, rows, highest, toCell);
    }

    private double column(double x, double y) {
        return toCell.getScaleX() * x + toCell.getShearX() * y + toCell.getTranslateX();
    }

    private double row(double x, double y) {
        return toCell.getShearY() * x + toCell.getScaleY() * y + toCell.getTranslateY();
    }

    private static double highest(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.max(a, b);
    }
}
