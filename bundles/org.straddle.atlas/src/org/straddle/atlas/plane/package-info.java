/** The flat surface that a map is drawn on: projections, and what lies on it in metres. */
package org.straddle.atlas.plane;
