package org.straddle.daysheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.Lane;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.sky.Window;

/**
 * Where everything of a sheet stands on the canvas: computed whole for each size, zoom and scroll, and never changed.
 * It needs no display, only a measure of text.
 *
 * @param body        the sight of the lanes, right of their heads and between axis and legend
 * @param lanes       also those scrolled out of sight
 * @param lanesHeight height of all lanes together
 */
public record DaySheetLayout(DaySheet sheet, Viewport view, Axis axis, Box body, List<LaneBox> lanes, Legend legend,
        int lanesHeight) {

    private static final int LEAST_GUTTER = 90;
    private static final int MOST_GUTTER = 210;

    public static DaySheetLayout of(DaySheet sheet, Viewport view, TextMeasure measure) {
        int gutter = gutter(view.width());
        Axis axis = new AxisLayout(sheet, view.scale(), measure, gutter, view.width()).axis();
        Legend legend = LegendLayout.of(sheet, measure, view);
        int top = axis.box().bottom();
        Box body = new Box(gutter, top, Math.max(1, view.width() - gutter), Math.max(0, legend.box().y() - top));
        Window shown = view.scale().shown(body.width());
        List<SheetDay> days = sheet.days().stream().filter(day -> day.window().overlaps(shown)).toList();
        List<LaneBox> lanes = new ArrayList<>();
        int y = top - view.scrollY();
        for (Lane lane : sheet.lanes()) {
            LaneLayout layout = new LaneLayout(lane, days, view.scale(), measure, body, y);
            lanes.add(layout.place());
            y += layout.height();
        }
        return new DaySheetLayout(sheet, view, axis, body, List.copyOf(lanes), legend, y - top + view.scrollY());
    }

    /** Width of the lanes' heads on a canvas of this width. */
    public static int gutter(int width) {
        return Math.max(LEAST_GUTTER, Math.min(MOST_GUTTER, width / 5));
    }

    /** The topmost thing at a point. */
    public Optional<SheetPart> at(int x, int y) {
        if (axis.box().contains(x, y)) {
            return axis.days().stream().filter(day -> day.box().contains(x, y)).map(SheetPart.class::cast).findFirst();
        }
        Optional<LaneBox> lane = lane(y);
        return x < body.x() ? lane.map(SheetPart.class::cast)
                : lane.flatMap(l -> parts(l).filter(part -> isAt(part, x, y)).findFirst());
    }

    /** The stop or turn with this id, if the time it is at is in sight. */
    public Optional<SheetPart> find(String id) {
        return lanes.stream().flatMap(lane -> lane.stops().stream())
                .flatMap(stop -> Stream.concat(Stream.<SheetPart>of(stop), stop.turns().stream()))
                .filter(part -> part instanceof StopBox stop && stop.stop().id().equals(id)
                        || part instanceof TurnBox turn && turn.turn().id().equals(id))
                .findFirst();
    }

    /** The lane at a height between axis and legend. */
    public Optional<LaneBox> lane(int y) {
        return y < body.y() || y >= body.bottom() ? Optional.empty()
                : lanes.stream().filter(lane -> y >= lane.strip().y() && y < lane.strip().bottom()).findFirst();
    }

    private static Stream<SheetPart> parts(LaneBox lane) {
        return Stream.of(lane.stops().stream().flatMap(stop -> stop.turns().stream()), lane.stops().stream(),
                lane.drives().stream(), lane.spans().stream()).flatMap(all -> all);
    }

    /** A turn can be a few pixels narrow; its words and mark belong to it. */
    private static boolean isAt(SheetPart part, int x, int y) {
        return part.box().contains(x, y) || part instanceof TurnBox turn
                && (turn.label().filter(label -> label.box().contains(x, y)).isPresent()
                        || turn.mark().filter(mark -> mark.shape().contains(x, y)).isPresent());
    }
}
