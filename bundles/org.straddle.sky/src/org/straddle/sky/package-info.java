/**
 * What is said of the sky, as values: element sets, places and the horizons around them, windows of time, passes,
 * directions, light. Nothing here knows how a bird moves; {@code sky.track} does, and {@code sky.prediction} answers by it.
 */
package org.straddle.sky;
