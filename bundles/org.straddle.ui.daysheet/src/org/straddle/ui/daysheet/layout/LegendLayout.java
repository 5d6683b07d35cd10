package org.straddle.ui.daysheet.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.straddle.check.Severity;
import org.straddle.model.Bird;
import org.straddle.model.SiteKind;
import org.straddle.ui.daysheet.sheet.BirdMark;
import org.straddle.ui.daysheet.sheet.DaySheet;
import org.straddle.ui.daysheet.sheet.Light;
import org.straddle.ui.things.ThingText;

/** Sets the legend in lines from left to right, as many as it needs, down to the bottom of the canvas. */
final class LegendLayout {

    private static final int PAD = 7;
    private static final int BETWEEN = 16;
    private static final int SAMPLE_WIDTH = 22;
    private static final int GLYPH = 13;

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
        Map<String, Swatch> words = words(sheet);
        if (!view.legend()) {
            return new Legend(new Box(0, view.height(), view.width(), 0), List.of());
        }
        LegendLayout dry = new LegendLayout(measure, view.width());
        words.forEach(dry::add);
        // The lanes matter more: a legend that would take more than a third of the canvas is cut at the bottom.
        int height = Math.min(dry.y + dry.lineHeight + PAD, view.height() / 3);
        LegendLayout set = new LegendLayout(measure, view.width());
        set.y = view.height() - height + PAD / 2 + 1;
        words.forEach(set::add);
        return new Legend(Box.between(0, view.width(), view.height() - height, height),
                set.entries.stream().filter(entry -> entry.words().box().bottom() <= view.height()).toList());
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
            words.put("not shown for want of usable times: " + sheet.untimed()
                    + (sheet.untimed() == 1 ? " stop or turn" : " stops or turns"), new Swatch.None());
        }
        if (sheet.knowsLight()) {
            words.put("day", new Swatch.OfLight(Light.State.DAY));
            if (sheet.has(Light.State.TWILIGHT)) {
                words.put("twilight", new Swatch.OfLight(Light.State.TWILIGHT));
            }
            words.put(sheet.has(Light.State.DARK) ? "dark" : "no darkness at any time",
                    sheet.has(Light.State.DARK) ? new Swatch.OfLight(Light.State.DARK) : new Swatch.None());
        }
        words.put("team is out", new Swatch.OfSpan());
        words.put("drive", new Swatch.OfLeg(true));
        words.put("too little time to drive", new Swatch.OfLeg(false));
        words.put("inside site", new Swatch.OfSite(SiteKind.INSIDE));
        words.put("line site", new Swatch.OfSite(SiteKind.LINE));
        words.put("corner site", new Swatch.OfSite(SiteKind.CORNER));
        words.put("pinned", new Swatch.OfPin());
        for (Severity severity : Severity.values()) {
            words.put(severity.label(), new Swatch.OfSeverity(severity));
        }
        for (Map.Entry<Bird, BirdMark> bird : sheet.birds().entrySet()) {
            words.put(bird.getValue().letters() + " " + ThingText.of(bird.getKey()),
                    new Swatch.OfBird(bird.getValue()));
        }
        return words;
    }
}
