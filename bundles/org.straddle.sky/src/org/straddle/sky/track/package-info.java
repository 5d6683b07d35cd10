/**
 * The way of a bird and the turning of the Earth below it, and the numerics on them. For {@code sky.prediction} alone:
 * the bundle does not export this room, because its classes hold scratch space and speak in radians, metres and seconds.
 *
 * <p>Orbits move by SGP4 (D. Vallado et al., "Revisiting Spacetrack Report #3", AIAA 2006-6753) through Orekit, onto an
 * even grid; between its nodes positions are cubics, in which rise, set and culmination are found by Newton's steps.
 */
package org.straddle.sky.track;
