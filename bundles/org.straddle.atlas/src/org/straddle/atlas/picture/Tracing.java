package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.plane.Outline;
import org.straddle.drawing.Frame;

/** Turns what lies on the plane into what is drawn on a sight: pixels, cut a little outside the window. */
final class Tracing {

    /** Wider than the widest line, so that its cut ends stay out of sight. */
    private static final double BLEED_PX = 12;

    private final Sight sight;
    private final Frame frame;

    Tracing(Sight sight) {
        this.sight = sight;
        this.frame = sight.frame().grown(BLEED_PX);
    }

    Sight sight() {
        return sight;
    }

    Frame frame() {
        return frame;
    }

    double[] px(double[] points) {
        double[] px = new double[points.length];
        for (int i = 0; i < points.length; i += 2) {
            px[i] = sight.pxX(points[i]);
            px[i + 1] = sight.pxY(points[i + 1]);
        }
        return px;
    }

    /** Rings with their cut edges running outside the window. */
    List<float[]> rings(List<double[]> rings) {
        List<float[]> all = new ArrayList<>();
        for (double[] ring : rings) {
            double[] cut = frame.cutRing(px(ring));
            if (cut.length >= 8) {
                all.add(floats(cut));
            }
        }
        return all;
    }

    List<float[]> lines(List<double[]> lines) {
        List<float[]> all = new ArrayList<>();
        for (double[] line : lines) {
            frame.cutLine(px(line)).forEach(part -> all.add(floats(part)));
        }
        return all;
    }

    List<float[]> lines(Iterable<Outline> outlines) {
        List<float[]> all = new ArrayList<>();
        outlines.forEach(outline -> all.addAll(lines(outline.parts())));
        return all;
    }

    static float[] floats(double[] values) {
        float[] floats = new float[values.length];
        for (int i = 0; i < values.length; i++) {
            floats[i] = (float) values[i];
        }
        return floats;
    }
}
