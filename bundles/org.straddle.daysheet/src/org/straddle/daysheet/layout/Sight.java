package org.straddle.daysheet.layout;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.sky.Window;

/** What part of the time is in sight, and how large. Knows nothing of the display. */
public final class Sight {

    private static final double STEP = 1.4;
    /** Room at both sides of what is fitted, as a part of it. */
    private static final double MARGIN = 0.025;

    private DaySheet sheet;
    private TimeScale scale;
    private int width = 1;
    /** What is to fill the width, also when the width changes; null after zooming or panning by hand. */
    private Window fitted;

    /** Stays where it is when the sheet is a newer one of the same event, if there is something left to see there. */
    public void show(DaySheet newer) {
        boolean same = sheet != null && sheet.event().getId().equals(newer.event().getId());
        boolean stays = same && fitted == null && newer.range().overlaps(scale.shown(width));
        boolean wholeBefore = same && sheet.busy().equals(fitted);
        sheet = newer;
        if (stays) {
            settle(scale);
        } else if (!same || wholeBefore || fitted == null || !newer.range().overlaps(fitted)) {
            fitAll();
        } else {
            fit(fitted);
        }
    }

    public void clear() {
        sheet = null;
        scale = null;
        fitted = null;
    }

    public Optional<DaySheet> sheet() {
        return Optional.ofNullable(sheet);
    }

    /** Valid while there is a sheet. */
    public TimeScale scale() {
        return scale;
    }

    public Window shown() {
        return scale.shown(width);
    }

    public void resize(int newWidth) {
        width = Math.max(1, newWidth);
        if (sheet != null && fitted != null) {
            fit(fitted);
        } else if (sheet != null) {
            settle(scale);
        }
    }

    public void fitAll() {
        fit(sheet.busy());
    }

    public void fit(SheetDay day) {
        fit(day.busy());
    }

    /** The day that fills the sight alone, or most of it. */
    public SheetDay day() {
        return day(middle());
    }

    public SheetDay day(Instant at) {
        return sheet.days().stream().filter(day -> day.window().contains(at)).findFirst().orElse(sheet.days().get(0));
    }

    /** One hour around an instant. */
    public void hour(Instant around) {
        fit(Window.of(around.minus(Duration.ofMinutes(30)), Duration.ofHours(1)));
        fitted = null;
    }

    public void zoom(boolean in, int x) {
        fitted = null;
        settle(scale.zoomed(in ? STEP : 1 / STEP, x));
    }

    public void zoom(boolean in) {
        zoom(in, width / 2);
    }

    public void pan(int pixels) {
        fitted = null;
        settle(scale.moved(pixels));
    }

    /** By a part of the width, to the right for positive parts. */
    public void page(double part) {
        pan((int) Math.round(width * part));
    }

    public void toStart() {
        moveTo(sheet.range().start());
    }

    public void toEnd() {
        moveTo(sheet.range().end());
    }

    /** With the instant at the left edge. */
    public void moveTo(Instant left) {
        fitted = null;
        settle(new TimeScale(left, scale.secondsPerPixel()));
    }

    /** Moves no farther than needed to see the window, or its start when it is longer than the sight. */
    public void bring(Window window) {
        Window shown = shown();
        Duration edge = shown.duration().dividedBy(20);
        if (shown.contains(window) || window.contains(shown)) {
            return;
        }
        boolean fromRight = window.end().isAfter(shown.end())
                && window.duration().plus(edge).compareTo(shown.duration()) < 0;
        moveTo(fromRight ? window.end().plus(edge).minus(shown.duration()) : window.start().minus(edge));
    }

    public Instant middle() {
        Window shown = shown();
        return shown.start().plus(shown.duration().dividedBy(2));
    }

    private void fit(Window window) {
        Duration margin = Duration.ofSeconds(Math.round(window.duration().toSeconds() * MARGIN));
        settle(TimeScale.fit(new Window(window.start().minus(margin), window.end().plus(margin)), width));
        fitted = window;
    }

    private void settle(TimeScale wanted) {
        scale = wanted.within(sheet.range(), width);
    }
}
