package org.straddle.daysheet.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.daysheet.layout.Box;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;

/** The sign of a site shows the borders of its squares as a map with north at the top has them. */
class GlyphsTest {

    private static final Box FIELD = new Box(100, 50, 13, 13);

    /** Squares side by side meet on a meridian, which runs from the top to the bottom. */
    @Test
    void westAndEastArePartedByALineDown() {
        assertEquals(List.of("down"), lines(SiteSpot.Kind.WEST_EAST));
    }

    /** Squares one above the other meet on a parallel, which runs from side to side. */
    @Test
    void southAndNorthArePartedByALineAcross() {
        assertEquals(List.of("across"), lines(SiteSpot.Kind.SOUTH_NORTH));
    }

    @Test
    void aCornerHasBothLinesAndAnInsideSiteNone() {
        assertEquals(List.of("down", "across"), lines(SiteSpot.Kind.CORNER));
        assertEquals(List.of(), lines(SiteSpot.Kind.INSIDE));
    }

    /** What is drawn through the middle of the field from edge to edge. */
    private static List<String> lines(SiteSpot.Kind kind) {
        Lines pen = new Lines();
        new Glyphs(new Brush(new Surface(pen, null), null)).site(kind, FIELD);
        List<String> lines = new ArrayList<>();
        for (float[] line : pen.drawn) {
            if (line.length == 4) {
                boolean down = line[0] == line[2] && Math.abs(line[0] - FIELD.middleX()) <= 1
                        && Math.abs(line[3] - line[1]) >= FIELD.height() - 2;
                boolean across = line[1] == line[3] && Math.abs(line[1] - FIELD.middleY()) <= 1
                        && Math.abs(line[2] - line[0]) >= FIELD.width() - 2;
                if (down || across) {
                    lines.add(down ? "down" : "across");
                }
            }
        }
        return lines;
    }

    /** Remembers lines, and draws nothing. */
    private static final class Lines implements Pen {

        private final List<float[]> drawn = new ArrayList<>();

        @Override
        public void fill(List<float[]> rings, int rgb, double opacity) {
        }

        @Override
        public void stroke(List<float[]> lines, Stroke stroke) {
            drawn.addAll(lines);
        }

        @Override
        public void write(Words words) {
        }

        @Override
        public Frame clip() {
            return new Frame(0, 0, 1000, 1000);
        }

        @Override
        public void within(Frame box, Runnable drawing) {
            drawing.run();
        }
    }
}
