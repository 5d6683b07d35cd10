package org.straddle.ui.sky.picture;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;

import org.straddle.drawing.Face;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Pen;
import org.straddle.drawing.Stroke.Dash;
import org.straddle.sky.prediction.CommonView;
import org.straddle.ui.sky.reach.ReachRow;
import org.straddle.ui.sky.reach.ReachSheet;
import org.straddle.ui.sky.reach.ReachWords;
import org.straddle.ui.sky.reach.Slice;
import org.straddle.words.Catalogue;

/**
 * Time across, places down. Each cell tells with a number, and with a hatch that is denser the greater it is, how well
 * the place is reached then; a bar below tells exactly when.
 */
public final class ReachPicture {

    private static final Catalogue TEXTS = Catalogue.of(ReachPicture.class);

    private static final int PAD = 6;
    private static final int INDENT = 14;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter HALVES = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
    /** Distance of hatch lines from sparse to dense, pixels. */
    private static final int[] PITCHES = {13, 9, 6, 4, 3};
    private static final double[] DEGREES = {5, 15, 30, 50};
    private static final double[] PERCENTS = {10, 30, 60, 90};

    private final Brush brush;
    private final ReachSheet sheet;
    private final int left;
    private final int top;
    private final int gutter;
    private final int width;
    private final int row;

    private ReachPicture(Brush brush, ReachSheet sheet, int left, int top, int width) {
        this.brush = brush;
        this.sheet = sheet;
        this.left = left;
        this.top = top;
        this.row = rowHeight(brush.letters());
        this.gutter = Math.min(width / 3, sheet.rows().stream().mapToInt(r -> brush.size(label(r), face(r)).width() + indent(r))
                .reduce(brush.size(TEXTS.text("reachPicture.elevationHere"), Face.PLAIN).width(), Math::max) + 2 * PAD);
        this.width = width - gutter - PAD;
    }

    /** Height of the whole picture: a line of times, the site, and all rows. */
    public static int height(Lettering letters, ReachSheet sheet) {
        return rowHeight(letters) * (sheet.rows().size() + 2)
                + ReachWords.key().size() * (keyLine(letters) + 2) + 2 * PAD;
    }

    /**
     * @param chosen index of the row to mark, or -1
     */
    public static void paint(Pen pen, Lettering letters, ReachSheet sheet, Box area, int scrolled, int chosen) {
        Brush brush = new Brush(pen, letters);
        brush.fill(area, Palette.PAPER);
        ReachPicture picture = new ReachPicture(brush, sheet, area.x(), area.y(), area.width());
        Box rows = new Box(area.x(), area.y() + 2 * picture.row, area.width(), Math.max(0, area.height() - 2 * picture.row));
        brush.within(rows, () -> picture.places(area, scrolled, chosen));
        picture.head();
        int below = area.y() + (sheet.rows().size() + 2) * picture.row + PAD;
        if (below + picture.key(below, false) <= area.y() + area.height()) {
            picture.key(below, true);
        }
    }

    private void places(Box area, int scrolled, int chosen) {
        for (int i = 0; i < sheet.rows().size(); i++) {
            int y = area.y() + (i + 2) * row - scrolled;
            if (y > area.y() && y < area.y() + area.height()) {
                place(sheet.rows().get(i), y, i == chosen);
            }
        }
    }

    /** How to read it. Returns the height. */
    private int key(int y, boolean drawn) {
        int line = brush.size("0", Face.SMALL).height() + 2;
        int at = y;
        for (String words : ReachWords.key()) {
            if (drawn) {
                brush.words(words, left + PAD, at, Face.SMALL, Palette.QUIET);
            }
            at += line;
        }
        return at - y;
    }

    /** Which row lies at a height; may be out of range. */
    public static int rowAt(Lettering letters, int y, int scrolled) {
        int row = rowHeight(letters);
        return y < 2 * row ? -1 : (y + scrolled) / row - 2;
    }

    /** The part of the rows that must be in sight to see one of them: from, to. */
    public static int[] extent(Lettering letters, int index) {
        int row = rowHeight(letters);
        return new int[] {index * row, (index + 1) * row, 2 * row};
    }

    private static int keyLine(Lettering letters) {
        return (int) Math.ceil(letters.height(Face.SMALL));
    }

    private static int rowHeight(Lettering letters) {
        return (int) Math.ceil(letters.height(Face.PLAIN)) + 12;
    }

    private void head() {
        DateTimeFormatter clock = sheet.slices().stream().skip(1)
                .allMatch(slice -> slice.window().start().getEpochSecond() % 60 == 0) ? CLOCK : HALVES;
        int next = 0;
        for (Slice slice : sheet.slices()) {
            Instant at = slice == sheet.slices().get(0) ? sheet.grain().rounded(slice.window().start())
                    : slice.window().start();
            String words = (slice == sheet.slices().get(0) ? HALVES : clock).format(at.atOffset(ZoneOffset.UTC));
            int x = x(slice.window().start());
            brush.pen(Palette.QUIET, 1, Dash.SOLID);
            brush.line(x, top + row - 4, x, top + row);
            if (x >= next && x + brush.size(words, Face.SMALL).width() <= left + gutter + width + PAD) {
                brush.words(words, x + 1, top + 2, Face.SMALL, Palette.QUIET);
                next = x + brush.size(words, Face.SMALL).width() + 5;
            }
        }
        brush.words(TEXTS.text("reachPicture.elevationHere"), left + PAD, top + row + 4, Face.PLAIN, Palette.INK);
        for (Slice slice : sheet.slices()) {
            cell(slice, top + row, slice.hereDeg(), DEGREES, "°", Palette.GROUND_EDGE);
        }
        brush.pen(Palette.INK, 1, Dash.SOLID);
        brush.line(left, top + 2 * row - 1, left + gutter + width, top + 2 * row - 1);
    }

    private void place(ReachRow place, int y, boolean chosen) {
        if (chosen) {
            brush.fill(new Box(left, y, gutter + width, row), Palette.SKY);
        }
        Face face = face(place);
        brush.words(fitted(label(place), face, gutter - indent(place) - PAD), left + PAD + indent(place), y + 3, face,
                Palette.INK);
        boolean square = place.kind() == ReachRow.Kind.SQUARE;
        for (int i = 0; i < sheet.slices().size(); i++) {
            OptionalDouble value = place.cells().get(i);
            if (value.isPresent()) {
                cell(sheet.slices().get(i), y, value.getAsDouble(), square ? DEGREES : PERCENTS, square ? "°" : "%",
                        square ? Palette.BIRD : Palette.WORKED);
            }
        }
        for (CommonView view : place.views()) {
            int x = x(view.window().start());
            brush.fill(new Box(x, y + row - 5, Math.max(2, x(view.window().end()) - x), 4), Palette.INK);
        }
        brush.pen(Palette.GRID, 1, Dash.SOLID);
        brush.line(left, y + row - 1, left + gutter + width, y + row - 1);
        if (chosen) {
            brush.pen(Palette.INK, 2, Dash.SOLID);
            brush.outline(new Box(left + 1, y, gutter + width - 2, row - 1));
        }
    }

    private void cell(Slice slice, int y, double value, double[] steps, String unit, int color) {
        int x = x(slice.window().start());
        Box box = new Box(x + 1, y + 2, x(slice.window().end()) - x - 2, row - 8);
        int level = 0;
        while (level < steps.length && value >= steps[level]) {
            level++;
        }
        hatch(box, PITCHES[level], color);
        String number = value > 0 && value < 0.5 ? "<1" : String.valueOf(Math.round(value));
        String words = brush.size(number + unit, Face.SMALL).width() <= box.width() ? number + unit : number;
        Size size = brush.size(words, Face.SMALL);
        if (size.width() <= box.width()) {
            Box place = new Box(box.x() + (box.width() - size.width()) / 2, box.y() + (box.height() - size.height()) / 2, size.width(),
                    size.height());
            brush.fill(new Box(place.x() - 2, place.y(), place.width() + 4, place.height()), Palette.PAPER);
            brush.words(words, place.x(), place.y(), Face.SMALL, Palette.INK);
        }
    }

    /** Rising lines at multiples of the pitch on the canvas, so that neighbouring cells join. */
    private void hatch(Box box, int pitch, int color) {
        if (box.width() <= 0 || box.height() <= 0) {
            return;
        }
        brush.pen(color, 1, Dash.SOLID);
        int right = box.x() + box.width() - 1;
        int bottom = box.y() + box.height() - 1;
        for (int c = Math.floorDiv(box.x() + box.y(), pitch) * pitch + pitch; c <= right + bottom; c += pitch) {
            int high = Math.max(box.y(), c - right);
            int low = Math.min(bottom, c - box.x());
            brush.line(c - high, high, c - low, low);
        }
    }

    private int x(Instant at) {
        double whole = sheet.found().pass().duration().toMillis();
        return left + gutter
                + (int) Math.round(Duration.between(sheet.found().pass().aos(), at).toMillis() / whole * width);
    }

    private static String label(ReachRow place) {
        return place.kind() == ReachRow.Kind.REGION
                ? TEXTS.text("reachPicture.share", "place", place.name(), "percent", Math.round(place.sharePercent())) : place.name();
    }

    private Face face(ReachRow place) {
        return place.kind() == ReachRow.Kind.SQUARE ? Face.PLAIN : Face.STRONG;
    }

    private static int indent(ReachRow place) {
        return place.kind() == ReachRow.Kind.SQUARE ? INDENT : 0;
    }

    private String fitted(String words, Face face, int most) {
        String fitting = words;
        while (fitting.length() > 1 && brush.size(fitting, face).width() > most) {
            fitting = fitting.substring(0, fitting.length() - (fitting.endsWith("…") ? 2 : 1)) + "…";
        }
        return fitting;
    }

    /** All rows on a page of their own, with the title above and the key below. */
    public static void paper(Pen pen, Lettering letters, ReachSheet sheet, String title, String summary, Box area) {
        Brush brush = new Brush(pen, letters);
        brush.fill(area, Palette.PAPER);
        brush.words(title, area.x() + PAD, area.y() + PAD, Face.STRONG, Palette.INK);
        int line = brush.size(title, Face.STRONG).height() + 2 * PAD;
        int height = height(letters, sheet);
        paint(pen, letters, sheet, new Box(area.x(), area.y() + line, area.width(), height), 0, -1);
        brush.words(summary.replace(". ", ".\n"), area.x() + PAD, area.y() + line + height + PAD, Face.SMALL, Palette.INK);
    }
}
