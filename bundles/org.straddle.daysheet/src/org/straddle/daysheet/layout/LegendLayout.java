package org.straddle.daysheet.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.atlas.scene.SiteSpot;
import org.straddle.check.Severity;
import org.straddle.daysheet.sheet.BirdMark;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.Light;
import org.straddle.drawing.Face;
import org.straddle.model.Bird;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** Sets the legend in lines from left to right, down to the bottom of the canvas. */
final class LegendLayout {

    private static final Catalogue TEXTS = Catalogue.of(LegendLayout.class);

    private static final int PAD = 7;
    private static final int BETWEEN = 16;
    private static final int SAMPLE_WIDTH = 22;
    private static final int GLYPH = 13;
    /** A higher legend takes too much of the lanes' room: then one line has to do. */
    private static final int MOST_PART = 6;
    private static final String MORE = TEXTS.text("legend.more");

    private final TextMeasure measure;
    private final int lineHeight;
    private final List<Legend.Entry> entries = new ArrayList<>();
    private final int right;
    private int x = PAD;
    private int y;

    private LegendLayout(TextMeasure measure, int width) {
        this.measure = measure;
        this.lineHeight = Math.max(GLYPH, measure.height(Face.SMALL)) + 3;
        this.right = width - PAD;
    }

    static Legend of(DaySheet sheet, TextMeasure measure, Viewport view) {
        if (view.legend() == LegendSize.NONE) {
            return new Legend(new Box(0, view.height(), view.width(), 0), List.of());
        }
        Map<String, Swatch> words = words(sheet);
        LegendLayout dry = new LegendLayout(measure, view.width());
        words.forEach(dry::add);
        int whole = dry.y + dry.lineHeight + PAD;
        int line = dry.lineHeight + PAD;
        // The lanes matter more: even a legend that is asked for in full is cut at a third of the canvas.
        boolean fits = whole <= Math.max(line, view.height() / MOST_PART);
        return view.legend() == LegendSize.FULL || fits ? set(words, measure, view, Math.min(whole, view.height() / 3))
                : set(hardest(words), measure, view, Math.min(line, view.height() / 3));
    }

    private static Legend set(Map<String, Swatch> words, TextMeasure measure, Viewport view, int height) {
        LegendLayout set = new LegendLayout(measure, view.width());
        set.y = view.height() - height + PAD / 2 + 1;
        words.forEach(set::add);
        return new Legend(Box.between(0, view.width(), view.height() - height, height),
                set.entries.stream().filter(entry -> entry.words().box().bottom() <= view.height()).toList());
    }

    /** For one line: how to get the rest, what is missing, then the birds, which nobody can guess. */
    private static Map<String, Swatch> hardest(Map<String, Swatch> words) {
        Map<String, Swatch> line = new LinkedHashMap<>();
        line.put(MORE, new Swatch.None());
        words.entrySet().stream().filter(entry -> entry.getValue() instanceof Swatch.None && !entry.getKey().equals(TEXTS.text("legend.nodark")))
                .forEach(entry -> line.put(entry.getKey(), entry.getValue()));
        words.entrySet().stream().filter(entry -> entry.getValue() instanceof Swatch.OfBird)
                .forEach(entry -> line.put(entry.getKey(), entry.getValue()));
        words.forEach(line::putIfAbsent);
        return line;
    }

    private void add(String text, Swatch swatch) {
        int sampleWidth = swatch instanceof Swatch.None ? 0
                : swatch instanceof Swatch.OfSite || swatch instanceof Swatch.OfSeverity
                        || swatch instanceof Swatch.OfPin ? GLYPH : SAMPLE_WIDTH;
        int textWidth = measure.width(text, Face.SMALL);
        if (x > PAD && x + sampleWidth + 4 + textWidth > right) {
            x = PAD;
            y += lineHeight;
        }
        Box sample = new Box(x, y + (lineHeight - GLYPH) / 2, sampleWidth, GLYPH);
        Box room = Box.between(sampleWidth == 0 ? x : sample.right() + 4, right, y, lineHeight);
        Label.clipped(text, room, Face.SMALL, measure).ifPresent(words -> {
            entries.add(new Legend.Entry(swatch, sample, words));
            x = words.box().right() + BETWEEN;
        });
    }

    private static Map<String, Swatch> words(DaySheet sheet) {
        Map<String, Swatch> words = new LinkedHashMap<>();
        if (sheet.untimed() > 0) {
            words.put(TEXTS.text("legend.untimed", "count", sheet.untimed()), new Swatch.None());
        }
        if (sheet.knowsLight()) {
            words.put(TEXTS.text("legend.day"), new Swatch.OfLight(Light.State.DAY));
            if (sheet.has(Light.State.TWILIGHT)) {
                words.put(TEXTS.text("legend.twilight"), new Swatch.OfLight(Light.State.TWILIGHT));
            }
            words.put(sheet.has(Light.State.DARK) ? TEXTS.text("legend.dark") : TEXTS.text("legend.nodark"),
                    sheet.has(Light.State.DARK) ? new Swatch.OfLight(Light.State.DARK) : new Swatch.None());
        }
        words.put(TEXTS.text("legend.road"), new Swatch.OfSpan());
        words.put(TEXTS.text("legend.drive"), new Swatch.OfDrive(true));
        words.put(TEXTS.text("legend.short"), new Swatch.OfDrive(false));
        words.put(TEXTS.text("legend.inside"), new Swatch.OfSite(SiteSpot.Kind.INSIDE));
        words.put(TEXTS.text("legend.westeast"), new Swatch.OfSite(SiteSpot.Kind.WEST_EAST));
        words.put(TEXTS.text("legend.southnorth"), new Swatch.OfSite(SiteSpot.Kind.SOUTH_NORTH));
        words.put(TEXTS.text("legend.corner"), new Swatch.OfSite(SiteSpot.Kind.CORNER));
        words.put(TEXTS.text("legend.pinned"), new Swatch.OfPin());
        words.put(TEXTS.text("legend.fits"), new Swatch.OfFitting());
        for (Severity severity : Severity.values()) {
            words.put(severity.label(), new Swatch.OfSeverity(severity));
        }
        for (Map.Entry<Bird, BirdMark> bird : sheet.birds().entrySet()) {
            words.put(bird.getValue().letters() + " " + Naming.name(bird.getKey()),
                    new Swatch.OfBird(bird.getValue()));
        }
        return words;
    }
}
