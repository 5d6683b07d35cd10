package org.straddle.atlas.plane;

import java.util.List;

import org.locationtech.jts.geom.Envelope;

/**
 * A thing on the plane.
 *
 * @param kind what the parts are
 * @param parts x and y in turn, metres on the plane: points, lines, or closed rings whose inside is what an odd number
 *     of them surrounds
 * @param name may be empty
 */
public record Outline(Kind kind, List<double[]> parts, String name) {

    /** What the parts of an outline are. */
    public enum Kind {
        /** Each position for itself. */
        POINTS,
        /** Each part a line. */
        LINES,
        /** Each part a closed ring. */
        AREA
    }

    public Outline {
        parts = List.copyOf(parts);
    }

    /** The box around all parts, metres. */
    public Envelope box() {
        Envelope box = new Envelope();
        for (double[] part : parts) {
            for (int i = 0; i < part.length; i += 2) {
                box.expandToInclude(part[i], part[i + 1]);
            }
        }
        return box;
    }

    /** Number of positions in all parts. */
    public int size() {
        return parts.stream().mapToInt(part -> part.length / 2).sum();
    }
}
