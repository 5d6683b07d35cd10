package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;

/** Cuts a mass of lines into instructions that are each drawn in a moment, so that drawing can pause between them. */
final class Pieces {

    private static final int MOST_POINTS = 400;

    private Pieces() {
    }

    static void lines(List<float[]> lines, Stroke stroke, List<Mark> into) {
        List<float[]> piece = new ArrayList<>();
        int points = 0;
        for (float[] line : lines) {
            piece.add(line);
            points += line.length / 2;
            if (points >= MOST_POINTS) {
                into.add(new Mark.Line(piece, stroke));
                piece = new ArrayList<>();
                points = 0;
            }
        }
        if (!piece.isEmpty()) {
            into.add(new Mark.Line(piece, stroke));
        }
    }

    static void areas(List<List<float[]>> areas, int rgb, double opacity, List<Mark> into) {
        List<float[]> piece = new ArrayList<>();
        int points = 0;
        for (List<float[]> rings : areas) {
            piece.addAll(rings);
            points += rings.stream().mapToInt(ring -> ring.length / 2).sum();
            if (points >= MOST_POINTS) {
                into.add(new Mark.Fill(piece, rgb, opacity));
                piece = new ArrayList<>();
                points = 0;
            }
        }
        if (!piece.isEmpty()) {
            into.add(new Mark.Fill(piece, rgb, opacity));
        }
    }
}
