package org.straddle.atlas.plane;

/**
 * A point of a {@link Plane}.
 *
 * @param x metres eastward from the centre
 * @param y metres northward from the centre
 */
public record PlanePoint(double x, double y) {
}
