package org.straddle.ui.sky.picture;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.ui.sky.pass.ArcPoint;
import org.straddle.ui.sky.pass.Dial;
import org.straddle.ui.sky.pass.Moment;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** What to add to the dial from AOS to LOS, one line for each link. */
final class DialPainter {

    private static final Catalogue TEXTS = Catalogue.of(DialPainter.class);

    private final Brush brush;
    private final PassSheet sheet;
    private final Box box;
    private final Box area;
    private final double topKhz;

    private DialPainter(Brush brush, PassSheet sheet, Box area) {
        this.brush = brush;
        this.sheet = sheet;
        this.area = area;
        int line = brush.size("0", Face.SMALL).height();
        int left = brush.size("−10", Face.SMALL).width() + 8;
        this.box = new Box(area.x() + left, area.y() + line + 8, area.width() - left - 12,
                area.height() - 2 * line - 14 - (line + 2) * sheet.dials().size());
        this.topKhz = topKhz();
    }

    static void paint(Brush brush, PassSheet sheet, Box area, Instant pointer) {
        DialPainter painter = new DialPainter(brush, sheet, area);
        if (sheet.dials().isEmpty()) {
            brush.words(TEXTS.text("dialPainter.frequenciesEnteredBird"), area.x() + 8, area.y() + 8, Face.SMALL,
                    Palette.QUIET);
        } else if (painter.fits()) {
            painter.paint(pointer);
        }
    }

    /** Whether there is room enough to read anything. */
    static boolean fits(Brush brush, PassSheet sheet, Box area) {
        return sheet.dials().isEmpty() ? area.height() > 100 : new DialPainter(brush, sheet, area).fits();
    }

    private boolean fits() {
        return box.width() > 60 && box.height() > 30;
    }

    private void paint(Instant pointer) {
        brush.words(TEXTS.text("dialPainter.addDialKhz"), area.x() + 4, area.y() + 2, Face.SMALL, Palette.INK);
        brush.fill(box, Palette.PAPER);
        scale();
        for (Moment moment : sheet.moments()) {
            int x = x(moment.at());
            brush.pen(Palette.LINE, 1, Dash.SOLID);
            brush.line(x, box.y(), x, box.y() + box.height());
            Size size = brush.size(moment.word(), Face.SMALL);
            brush.words(moment.word(), Math.max(box.x(), Math.min(x - size.width() / 2, box.x() + box.width() - size.width())),
                    box.y() + box.height() + 3, Face.SMALL, Palette.INK);
        }
        int y = box.y() + box.height() + brush.size("0", Face.SMALL).height() + 5;
        for (Dial dial : sheet.dials()) {
            curve(dial);
            key(dial, y);
            y += brush.size("0", Face.SMALL).height() + 2;
        }
        if (pointer != null && sheet.found().pass().window().contains(pointer)) {
            brush.pen(Palette.INK, 1, Dash.SOLID);
            brush.line(x(pointer), box.y(), x(pointer), box.y() + box.height());
        }
        brush.pen(Palette.QUIET, 1, Dash.SOLID);
        brush.outline(box);
    }

    private void scale() {
        for (double khz : new double[] {-topKhz, -topKhz / 2, 0, topKhz / 2, topKhz}) {
            brush.pen(khz == 0 ? Palette.QUIET : Palette.GRID, 1, Dash.SOLID);
            brush.line(box.x(), y(khz), box.x() + box.width(), y(khz));
            String words = (khz > 0 ? "+" : "") + FigureText.inCurrent().atMost(1, khz)
                    .replace('-', '−');
            Size size = brush.size(words, Face.SMALL);
            brush.words(words, box.x() - size.width() - 4, y(khz) - size.height() / 2, Face.SMALL, Palette.QUIET);
        }
    }

    private void curve(Dial dial) {
        List<ArcPoint> points = Stream.of(Stream.of(sheet.aos().look()),
                sheet.arc().points().filter(point -> point.at().isAfter(sheet.aos().at())
                        && point.at().isBefore(sheet.los().at())),
                Stream.of(sheet.los().look())).flatMap(part -> part).toList();
        pen(dial);
        brush.curve(points, point -> exactX(point.at()), point -> exactY(dial.addKhz(point.rangeRateKmS())));
    }

    private void key(Dial dial, int y) {
        pen(dial);
        String words = TEXTS.text("dialPainter.mhz", "verb", dial.verb());
        Size size = brush.size(words, Face.SMALL);
        brush.line(area.x() + 8, y + size.height() / 2, area.x() + 34, y + size.height() / 2);
        brush.words(words, area.x() + 40, y, Face.SMALL, Palette.INK);
    }

    private void pen(Dial dial) {
        boolean down = dial.direction() == Dial.Direction.DOWNLINK;
        int color = down ? Palette.BIRD : Palette.UPLINK;
        brush.pen(color, 2, down ? Dash.SOLID : Dash.DASHED);
    }

    /** The least round figure above all shifts. */
    private double topKhz() {
        double most = sheet.dials().stream().flatMap(dial -> sheet.arc().points()
                .map(point -> Math.abs(dial.addKhz(point.rangeRateKmS())))).max(Double::compare).orElse(1.0);
        double ten = Math.pow(10, Math.floor(Math.log10(Math.max(most, 0.01))));
        return most <= ten ? ten : most <= 2 * ten ? 2 * ten : most <= 4 * ten ? 4 * ten : most <= 6 * ten ? 6 * ten
                : 10 * ten;
    }

    private int x(Instant at) {
        return (int) Math.round(exactX(at));
    }

    private int y(double khz) {
        return (int) Math.round(exactY(khz));
    }

    private double exactX(Instant at) {
        double whole = Duration.between(sheet.aos().at(), sheet.los().at()).toMillis();
        return box.x() + Duration.between(sheet.aos().at(), at).toMillis() / whole * box.width();
    }

    private double exactY(double khz) {
        return box.y() + (topKhz - khz) / (2 * topKhz) * box.height();
    }
}
