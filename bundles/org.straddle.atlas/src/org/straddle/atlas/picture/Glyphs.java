package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.TeamMark;
import org.straddle.drawing.Words;

/**
 * The small drawings of a map. A site is drawn as the squares that meet at it: one cell, two side by side or one above
 * the other, or four, with the mark as a dot where they meet.
 */
public final class Glyphs {

    private static final double CELL_PX = 9;
    private static final Stroke EDGE = Stroke.solid(Palette.INK, 1.3);
    private static final Stroke THIN = Stroke.solid(Palette.INK, 1);
    private static final double TEAM_WIDTH = 15;
    private static final double TEAM_HEIGHT = 12;

    private Glyphs() {
    }

    /** Room of a site's drawing around a point, pixels. */
    public static Frame box(SiteSpot.Kind kind, double x, double y, double size) {
        double cell = CELL_PX * size;
        double halfWidth = kind == SiteSpot.Kind.INSIDE || kind == SiteSpot.Kind.SOUTH_NORTH ? 0.7 * cell : cell;
        double halfHeight = kind == SiteSpot.Kind.INSIDE || kind == SiteSpot.Kind.WEST_EAST ? 0.7 * cell : cell;
        return new Frame(x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight);
    }

    /** A site with its middle at a point. */
    public static List<Mark> site(SiteSpot.Kind kind, double x, double y, double size) {
        Frame box = box(kind, x, y, size);
        List<float[]> lines = new ArrayList<>();
        lines.add(box.ring());
        if (kind == SiteSpot.Kind.WEST_EAST || kind == SiteSpot.Kind.CORNER) {
            lines.add(line(x, box.top(), x, box.bottom()));
        }
        if (kind == SiteSpot.Kind.SOUTH_NORTH || kind == SiteSpot.Kind.CORNER) {
            lines.add(line(box.left(), y, box.right(), y));
        }
        return List.of(new Mark.Fill(List.of(box.grown(1.5).ring()), Palette.PAPER, 0.85),
                new Mark.Line(lines, EDGE),
                new Mark.Fill(List.of(round(x, y, 2.9 * size)), Palette.of(kind), 1));
    }

    /** A place that was found along a road and is no site yet: a hollow diamond. */
    public static List<Mark> place(double x, double y) {
        List<float[]> shape = List.of(diamond(x, y, 6.5));
        return List.of(new Mark.Fill(shape, Palette.PAPER, 0.9), new Mark.Line(shape, EDGE),
                new Mark.Fill(List.of(round(x, y, 1.4)), Palette.INK, 1));
    }

    /** The same shape around a place that is chosen. */
    public static float[] diamond(double x, double y, double radius) {
        return ring(x, y - radius, x + radius, y, x, y + radius, x - radius, y);
    }

    /** A house with its middle at a point. */
    static List<Mark> base(double x, double y) {
        float[] house = ring(x - 6, y + 6, x - 6, y - 1, x, y - 7, x + 6, y - 1, x + 6, y + 6);
        return List.of(new Mark.Fill(List.of(house), Palette.PAPER, 1), new Mark.Line(List.of(house), EDGE),
                new Mark.Fill(List.of(ring(x - 2, y + 6, x - 2, y + 1, x + 2, y + 1, x + 2, y + 6)), 0xE69F00, 1));
    }

    /** A circle, a triangle or an octagon: told apart without colour. */
    static List<Mark> attention(Attention attention, double x, double y) {
        if (attention == Attention.NONE) {
            return List.of();
        }
        float[] shape = switch (attention) {
            case ADVICE -> round(x, y, 4.6);
            case WARNING -> ring(x, y - 5.5, x + 5.5, y + 4.5, x - 5.5, y + 4.5);
            default -> ring(x - 2.2, y - 5.2, x + 2.2, y - 5.2, x + 5.2, y - 2.2, x + 5.2, y + 2.2, x + 2.2, y + 5.2,
                    x - 2.2, y + 5.2, x - 5.2, y + 2.2, x - 5.2, y - 2.2);
        };
        float[] sign = attention == Attention.BLOCKER ? line(x - 2.6, y, x + 2.6, y)
                : line(x, y - 1.6, x, y + 2.2);
        return List.of(new Mark.Fill(List.of(shape), Palette.of(attention), 1),
                new Mark.Line(List.of(shape), Stroke.solid(Palette.PAPER, 1)),
                new Mark.Line(List.of(sign), Stroke.solid(attention == Attention.WARNING ? Palette.INK : Palette.PAPER, 1.6)));
    }

    /** Width of so many team marks in a row, pixels. */
    static double teamsWidth(int teams) {
        return Math.min(teams, 4) * TEAM_WIDTH;
    }

    static double teamsHeight() {
        return TEAM_HEIGHT;
    }

    /** Team marks in a row, colour and hatch with the number on white; from the fifth on only how many more. */
    static List<Mark> teams(List<TeamMark> teams, double left, double top) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < Math.min(teams.size(), 4); i++) {
            double x = left + i * TEAM_WIDTH;
            if (i == 3 && teams.size() > 4) {
                marks.add(new Words("+" + (teams.size() - 3), (float) (x + TEAM_WIDTH / 2), (float) (top + TEAM_HEIGHT / 2),
                        Face.SMALL, Palette.INK, Palette.PAPER));
            } else {
                marks.addAll(team(teams.get(i), x, top));
            }
        }
        return marks;
    }

    /** One team mark: its number on white between two ends in its colour and hatch. */
    public static List<Mark> team(TeamMark team, double x, double y) {
        Frame box = new Frame(x, y, x + TEAM_WIDTH - 1, y + TEAM_HEIGHT - 1);
        List<float[]> whole = List.of(box.ring());
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Fill(whole, team.rgb(), 1));
        List<float[]> hatch = switch (team.pattern()) {
            case PLAIN -> List.of();
            case RISING -> Hatching.rising(whole, 4, x + y);
            case LEVEL -> Hatching.level(whole, 3, y + 0.5);
            case DOTS -> dots(box);
        };
        if (!hatch.isEmpty()) {
            marks.add(new Mark.Line(hatch, Stroke.solid(Palette.INK, team.pattern() == TeamMark.Pattern.DOTS ? 1.6 : 1)));
        }
        marks.add(new Mark.Line(whole, THIN));
        String number = team.number() < 1 ? "–" : String.valueOf(team.number());
        marks.add(new Words(number, (float) (x + (TEAM_WIDTH - 1) / 2), (float) (y + (TEAM_HEIGHT - 1) / 2), Face.SMALL,
                Palette.INK, Palette.PAPER));
        return marks;
    }

    private static List<float[]> dots(Frame box) {
        List<float[]> dots = new ArrayList<>();
        for (double y = box.top() + 2; y < box.bottom(); y += 3.5) {
            for (double x = box.left() + 2; x < box.right(); x += 3.5) {
                dots.add(line(x, y, x + 1.2, y));
            }
        }
        return dots;
    }

    /** The head of an arrow with its tip at a point, pointing along a direction in pixels. */
    static float[] arrow(double x, double y, double dx, double dy) {
        double length = Math.max(1e-9, Math.hypot(dx, dy));
        double ux = dx / length;
        double uy = dy / length;
        return ring(x, y, x - 9 * ux - 4 * uy, y - 9 * uy + 4 * ux, x - 9 * ux + 4 * uy, y - 9 * uy - 4 * ux);
    }

    static float[] line(double... points) {
        return Tracing.floats(points);
    }

    /** A closed ring through corners. */
    static float[] ring(double... corners) {
        float[] ring = new float[corners.length + 2];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = (float) corners[i % corners.length];
        }
        return ring;
    }

    /** A circle as a ring of 16 corners: at this size nobody sees them. */
    static float[] round(double x, double y, double radius) {
        float[] ring = new float[34];
        for (int i = 0; i <= 16; i++) {
            double angle = 2 * Math.PI * i / 16;
            ring[2 * i] = (float) (x + radius * Math.cos(angle));
            ring[2 * i + 1] = (float) (y + radius * Math.sin(angle));
        }
        return ring;
    }
}
