package org.straddle.ui.sky.picture;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import org.straddle.drawing.Face;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.ui.sky.pass.ArcPiece;
import org.straddle.ui.sky.pass.ArcPoint;
import org.straddle.ui.sky.pass.Compass;
import org.straddle.ui.sky.pass.Light;
import org.straddle.ui.sky.pass.Moment;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;
import org.straddle.ui.sky.pass.SunSeen;
import org.straddle.ui.sky.pass.Worker;
import org.straddle.words.Catalogue;

/**
 * The horizon as one turns about at the site: skyline, arc of the bird, sun. The bird's line is solid in sunlight,
 * dashed in shadow and dotted behind the mask.
 */
final class HorizonPainter {

    private static final Catalogue TEXTS = Catalogue.of(HorizonPainter.class);

    /** On a lower picture the moments tell their time only. */
    private static final int LOW_PX = 200;
    private static final int LEAST_WIDTH_PX = 200;
    private static final int LEAST_HEIGHT_PX = 60;
    private static final int LEAST_GLANCE_PX = 20;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);

    private final Brush brush;
    private final PassSheet sheet;
    private final HorizonFrame frame;
    private final Spots spots;

    private HorizonPainter(Brush brush, PassSheet sheet, HorizonFrame frame) {
        this.brush = brush;
        this.sheet = sheet;
        this.frame = frame;
        this.spots = new Spots(new Box(frame.left() + 2, frame.top() + 2, frame.width() - 4,
                frame.height() - 4));
    }

    /** @param pointer where the reader points; null for nowhere */
    static HorizonFrame paint(Brush brush, PassSheet sheet, Box area, Instant pointer) {
        HorizonFrame frame = frame(brush, sheet, area);
        new HorizonPainter(brush, sheet, frame).paint(pointer);
        return frame;
    }

    /** Whether there is room enough to read it. */
    static boolean fits(Brush brush, PassSheet sheet, Box area) {
        HorizonFrame frame = frame(brush, sheet, area);
        return frame.width() > LEAST_WIDTH_PX && frame.height() > LEAST_HEIGHT_PX;
    }

    private static HorizonFrame frame(Brush brush, PassSheet sheet, Box area) {
        int line = brush.size("0", Face.SMALL).height();
        int left = brush.size("90°", Face.SMALL).width() + 8;
        return HorizonFrame.of(sheet, area.x() + left, area.y() + 6, area.width() - left - 12, area.height() - 2 * line - 18);
    }

    /** The bare arc over the skyline, and below it in words what the axes would say. */
    static HorizonFrame glance(Brush brush, PassSheet sheet, Box area, Instant pointer) {
        int line = brush.size("0", Face.SMALL).height();
        HorizonFrame frame = HorizonFrame.of(sheet, area.x() + 2, area.y() + 2, Math.max(1, area.width() - 4),
                Math.max(1, area.height() - line - 6));
        if (frame.height() > LEAST_GLANCE_PX) {
            new HorizonPainter(brush, sheet, frame).glance(pointer);
        }
        String words = new SheetWords(sheet).glance();
        String more = TEXTS.text("horizonPainter.enlargePartSee", "words", words);
        brush.words(brush.size(more, Face.SMALL).width() < area.width() - 8 ? more : words, area.x() + 4,
                area.y() + Math.max(0, area.height() - line - 3), Face.SMALL, Palette.INK);
        return frame;
    }

    private void glance(Instant pointer) {
        brush.fill(new Box(frame.left(), frame.top(), frame.width(), frame.height()), Palette.SKY);
        brush.within(inside(), () -> {
            ground();
            worked();
            arc();
            if (pointer != null) {
                ArcPoint there = sheet.arc().at(pointer);
                brush.disc(frame.x(there.azimuthDeg()), frame.y(there.elevationDeg()), 4, Palette.PAPER, Palette.INK);
            }
        });
    }

    private Box inside() {
        return new Box(frame.left(), frame.top(), frame.width() + 1, frame.height() + 1);
    }

    private void paint(Instant pointer) {
        brush.fill(new Box(frame.left(), frame.top(), frame.width(), frame.height()), Palette.SKY);
        HorizonAxes axes = new HorizonAxes(brush, frame);
        axes.elevations();
        brush.within(inside(), this::scene);
        axes.azimuths();
        moments();
        tickWords();
        if (pointer != null) {
            pointer(pointer);
        }
        legend();
    }

    private void scene() {
        ground();
        sheet.arc().points().forEach(point -> spots.take(new Box(frame.x(point.azimuthDeg()) - 2,
                frame.y(point.elevationDeg()) - 2, 4, 4)));
        sun();
        worked();
        arc();
        ticks();
    }

    private void ground() {
        float[] skyline = new float[2 * (frame.width() + 1)];
        for (int i = 0; i <= frame.width(); i++) {
            skyline[2 * i] = frame.left() + i;
            skyline[2 * i + 1] = (float) frame.exactY(sheet.horizon().elevationDegAt(frame.azimuthDeg(frame.left() + i)));
        }
        float[] outline = Arrays.copyOf(skyline, skyline.length + 4);
        outline[skyline.length] = frame.right();
        outline[skyline.length + 1] = frame.bottom();
        outline[skyline.length + 2] = frame.left();
        outline[skyline.length + 3] = frame.bottom();
        brush.fill(outline, Palette.GROUND);
        brush.pen(Palette.GROUND_EDGE, 2, Dash.SOLID);
        brush.polyline(skyline);
        if (frame.bottomDeg() < 0) {
            brush.pen(Palette.QUIET, 1, Dash.SOLID);
            brush.line(frame.left(), frame.y(0), frame.right(), frame.y(0));
        }
    }

    private void sun() {
        SunSeen sun = sheet.tca().sun();
        if (!sun.isUp()) {
            return;
        }
        int x = frame.x(frame.inside(sun.azimuthDeg()));
        int y = frame.y(sun.elevationDeg());
        brush.sun(x, y);
        spots.take(new Box(x - 14, y - 14, 28, 28));
        String words = TEXTS.text("horizonPainter.sun", "hidden", sheet.isSunHidden())
                + sheet.nearestSun().map(near -> TEXTS.text("horizonPainter.neverNearerThan",
                        "separationDeg", Math.round(near.separationDeg())))
                        .orElse("");
        Size size = brush.size(words, Face.SMALL);
        brush.slip(words, spots.some(x, y - 6, size), Face.SMALL, Palette.INK);
    }

    /** A broad band under the part of the arc that a team works. */
    private void worked() {
        brush.pen(Palette.WORKED_BAND, 10, Dash.SOLID);
        for (Worker worker : sheet.workers()) {
            List<ArcPoint> points = sheet.arc().points().filter(point -> worker.part().contains(point.at())).toList();
            line(points);
        }
    }

    private void line(List<ArcPoint> points) {
        brush.curve(points, point -> frame.exactX(point.azimuthDeg()), point -> frame.exactY(point.elevationDeg()));
    }

    private void arc() {
        for (ArcPiece piece : sheet.arc().pieces()) {
            switch (piece.light()) {
                case LIT -> brush.pen(Palette.BIRD, 3, Dash.SOLID);
                case SHADED -> brush.pen(Palette.SHADED, 3, Dash.DASHED);
                case HIDDEN -> brush.pen(Palette.INK, 2, Dash.DOTTED);
            }
            line(piece.points());
        }
        way();
    }

    /** Arrow heads a third and two thirds of the way between AOS and LOS. */
    private void way() {
        Duration third = sheet.found().pass().duration().dividedBy(3);
        for (int i = 1; i <= 2; i++) {
            Instant at = sheet.aos().at().plus(third.multipliedBy(i));
            ArcPoint before = sheet.arc().at(at.minus(third.dividedBy(20)));
            ArcPoint after = sheet.arc().at(at.plus(third.dividedBy(20)));
            brush.arrowHead(frame.x(before.azimuthDeg()), frame.y(before.elevationDeg()), frame.x(after.azimuthDeg()),
                    frame.y(after.elevationDeg()));
        }
    }

    private void ticks() {
        brush.pen(Palette.INK, 1, Dash.SOLID);
        for (Instant tick : Ticks.between(sheet.arc().start(), sheet.arc().end())) {
            ArcPoint at = sheet.arc().at(tick);
            brush.disc(frame.x(at.azimuthDeg()), frame.y(at.elevationDeg()), 3,
                    sheet.arc().light(tick) == Light.LIT ? Palette.BIRD : Palette.PAPER, Palette.INK);
        }
    }

    private void moments() {
        for (Moment moment : sheet.moments()) {
            int x = frame.x(moment.look().azimuthDeg());
            int y = frame.y(moment.look().elevationDeg());
            brush.mark(moment.word(), x, y);
            spots.take(new Box(x - 7, y - 7, 14, 14));
        }
        for (Moment moment : sheet.moments()) {
            String time = moment.word() + " " + moment.prefixed(sheet.grain().utc(moment.at())) + TEXTS.text("horizonPainter.zulu");
            String words = frame.height() < LOW_PX ? time : time + "\n" + Compass.words(moment.look().azimuthDeg()) + ", "
                    + Math.round(moment.look().elevationDeg()) + "°";
            Size size = brush.size(words, Face.STRONG);
            int x = frame.x(moment.look().azimuthDeg());
            int y = frame.y(moment.look().elevationDeg());
            Box place = spots.some(x, y, size);
            brush.leader(x, y, place);
            brush.slip(words, place, Face.STRONG, Palette.INK);
        }
    }

    private void tickWords() {
        for (Instant tick : Ticks.between(sheet.arc().start(), sheet.arc().end())) {
            ArcPoint at = sheet.arc().at(tick);
            String words = clock(tick);
            Size size = brush.size(words, Face.SMALL);
            spots.free(frame.x(at.azimuthDeg()), frame.y(at.elevationDeg()), size)
                    .ifPresent(place -> brush.slip(words, place, Face.SMALL, Palette.INK));
        }
    }

    /** UTC, and local time below where it differs. */
    private String clock(Instant tick) {
        String utc = CLOCK.format(tick.atOffset(ZoneOffset.UTC));
        return hasLocal() ? TEXTS.text("horizonPainter.times", "utc", utc,
                "atZone", CLOCK.format(tick.atZone(sheet.zone()))) : utc + TEXTS.text("horizonPainter.zulu");
    }

    private boolean hasLocal() {
        return sheet.zone().getRules().getOffset(sheet.tca().at()).getTotalSeconds() != 0;
    }

    private void pointer(Instant at) {
        ArcPoint look = sheet.arc().at(at);
        int x = frame.x(look.azimuthDeg());
        int y = frame.y(look.elevationDeg());
        brush.pen(Palette.INK, 1, Dash.SOLID);
        brush.line(x, frame.top(), x, frame.bottom());
        brush.line(frame.left(), y, frame.right(), y);
        brush.disc(x, y, 6, Palette.PAPER, Palette.INK);
        brush.disc(x, y, 3, Palette.INK, Palette.INK);
    }

    private void legend() {
        int y = frame.bottom() + brush.size("0", Face.SMALL).height() + 10;
        int x = frame.left();
        for (Light light : Light.values()) {
            if (sheet.arc().pieces().stream().noneMatch(piece -> piece.light() == light)) {
                continue;
            }
            switch (light) {
                case LIT -> brush.pen(Palette.BIRD, 3, Dash.SOLID);
                case SHADED -> brush.pen(Palette.SHADED, 3, Dash.DASHED);
                case HIDDEN -> brush.pen(Palette.INK, 2, Dash.DOTTED);
            }
            Size size = brush.size(light.words(), Face.SMALL);
            brush.line(x, y + size.height() / 2, x + 32, y + size.height() / 2);
            brush.words(light.words(), x + 38, y, Face.SMALL, Palette.INK);
            x += 38 + size.width() + 18;
        }
        if (!sheet.workers().isEmpty()) {
            brush.pen(Palette.WORKED_BAND, 10, Dash.SOLID);
            Size size = brush.size("worked", Face.SMALL);
            brush.line(x, y + size.height() / 2, x + 26, y + size.height() / 2);
            brush.words("worked", x + 32, y, Face.SMALL, Palette.INK);
            x += 32 + size.width() + 18;
        }
        String rest = TEXTS.text("horizonPainter.timesUtcHaslocal", "hasLocal", hasLocal());
        if (x + brush.size(rest, Face.SMALL).width() <= frame.right()) {
            brush.words(rest, x, y, Face.SMALL, Palette.QUIET);
        }
    }
}
