package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.scene.ReachShape;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;

/** The reach of a pass: a full line around who has the bird at some time, a dashed one around who has it all the time. */
final class ReachPainter {

    private ReachPainter() {
    }

    static List<Mark> paint(Tracing tracing, ReachShape reach) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Fill(tracing.rings(reach.ever()), Palette.REACH, 0.06));
        marks.add(new Mark.Fill(tracing.rings(reach.throughout()), Palette.REACH, 0.06));
        Pieces.lines(tracing.lines(reach.ever()), Stroke.solid(Palette.REACH, 2), marks);
        Pieces.lines(tracing.lines(reach.throughout()), new Stroke(Palette.REACH, 2, Stroke.Dash.DASHED), marks);
        return marks;
    }
}
