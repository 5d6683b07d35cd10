package org.straddle.daysheet.layout;

/**
 * The part of the sheet that is on the canvas.
 *
 * @param width   of the canvas, pixels
 * @param height  of the canvas, pixels
 * @param scale   pixel 0 is the left edge of the lanes, right of the team names
 * @param scrollY pixels of the lanes that are scrolled out at the top
 * @param legend  how much of the legend stands at the bottom
 */
public record Viewport(int width, int height, TimeScale scale, int scrollY, LegendSize legend) {
}
