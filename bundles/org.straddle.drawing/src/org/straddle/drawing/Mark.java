package org.straddle.drawing;

import java.util.List;

/** One instruction of a picture. */
public sealed interface Mark permits Mark.Fill, Mark.Line, Words {

    void draw(Pen pen);

    /** Filled rings; see {@link Pen#fill}. */
    record Fill(List<float[]> rings, int rgb, double opacity) implements Mark {

        @Override
        public void draw(Pen pen) {
            pen.fill(rings, rgb, opacity);
        }
    }

    /** Lines that look alike. */
    record Line(List<float[]> lines, Stroke stroke) implements Mark {

        @Override
        public void draw(Pen pen) {
            pen.stroke(lines, stroke);
        }
    }
}
