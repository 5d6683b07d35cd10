package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.scene.DriveLine;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.TeamMark;

/** Drives as geodesics in the colour of the team, told apart by dashes and a mark, with an arrow the way it goes. */
final class DrivePainter {

    private static final double SHORTEST_WITH_MARK_PX = 46;

    private DrivePainter() {
    }

    static List<Mark> paint(Tracing tracing, List<DriveLine> drives, Shown shown, Crowd crowd) {
        List<Mark> marks = new ArrayList<>();
        List<Mark> signs = new ArrayList<>();
        for (DriveLine drive : drives) {
            List<float[]> lines = shown.day().filter(day -> !day.equals(drive.day())).isPresent() ? List.of()
                    : tracing.lines(drive.parts());
            if (!lines.isEmpty()) {
                marks.add(new Mark.Line(lines, Stroke.solid(Palette.PAPER, 4.4)));
                marks.add(new Mark.Line(lines, stroke(drive.team())));
                lines.forEach(line -> sign(line, drive.team(), signs, crowd));
            }
        }
        marks.addAll(signs);
        return marks;
    }

    static Stroke stroke(TeamMark team) {
        return new Stroke(team.rgb(), 2.6, switch (team.pattern()) {
            case PLAIN -> Stroke.Dash.SOLID;
            case RISING -> Stroke.Dash.DASHED;
            case LEVEL -> Stroke.Dash.LONG_SHORT;
            case DOTS -> Stroke.Dash.DOTTED;
        });
    }

    /** An arrow at two thirds of the way, and the team's mark in the middle when there is room. */
    private static void sign(float[] line, TeamMark team, List<Mark> into, Crowd crowd) {
        double length = 0;
        for (int i = 2; i < line.length; i += 2) {
            length += Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]);
        }
        if (length < SHORTEST_WITH_MARK_PX) {
            return;
        }
        double[] tip = along(line, 0.66 * length);
        float[] arrow = Glyphs.arrow(tip[0], tip[1], tip[2], tip[3]);
        into.add(new Mark.Fill(List.of(arrow), team.rgb(), 1));
        into.add(new Mark.Line(List.of(arrow), Stroke.solid(Palette.INK, 0.8)));
        double[] middle = along(line, 0.5 * length);
        double left = middle[0] - Glyphs.teamsWidth(1) / 2;
        double top = middle[1] - Glyphs.teamsHeight() / 2;
        if (crowd.claim(new Frame(left, top, left + Glyphs.teamsWidth(1), top + Glyphs.teamsHeight()))) {
            into.addAll(Glyphs.team(team, left, top));
        }
    }

    /** The point so many pixels along a line, and the direction there. */
    private static double[] along(float[] line, double px) {
        double left = px;
        for (int i = 2; i < line.length; i += 2) {
            double dx = line[i] - line[i - 2];
            double dy = line[i + 1] - line[i - 1];
            double step = Math.hypot(dx, dy);
            if (left <= step || i + 2 >= line.length) {
                double part = step == 0 ? 0 : Math.min(1, left / step);
                return new double[] {line[i - 2] + part * dx, line[i - 1] + part * dy, dx, dy};
            }
            left -= step;
        }
        throw new IllegalArgumentException("A line has two ends");
    }
}
