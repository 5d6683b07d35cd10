package org.straddle.daysheet.layout;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.drawing.Face;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** Lays out the head of the sheet. */
final class AxisLayout {

    private static final Catalogue TEXTS = Catalogue.of(AxisLayout.class);

    private static final List<Duration> STEPS = Stream.of(5, 10, 15, 30, 60, 120, 180, 360, 720)
            .map(Duration::ofMinutes).toList();
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    /** So that two labels do not read as one. */
    private static final int BETWEEN_LABELS = 14;
    private static final int PAD = 6;
    private static final int KEYS = 9;

    private final DaySheet sheet;
    private final TimeScale scale;
    private final TextMeasure measure;
    private final int gutter;
    private final int width;
    private final Duration step;

    AxisLayout(DaySheet sheet, TimeScale scale, TextMeasure measure, int gutter, int width) {
        this.sheet = sheet;
        this.scale = scale;
        this.measure = measure;
        this.gutter = gutter;
        this.width = width;
        int least = measure.width("00:00", Face.SMALL) + BETWEEN_LABELS;
        this.step = STEPS.stream().filter(s -> scale.pixels(s) >= least).findFirst()
                .orElse(STEPS.get(STEPS.size() - 1));
    }

    Axis axis() {
        int dayHeight = measure.height(Face.STRONG) + 8;
        int rowHeight = measure.height(Face.SMALL) + 4;
        Box dayRow = Box.between(gutter, width, 0, dayHeight);
        Box utcRow = Box.between(gutter, width, dayHeight, rowHeight);
        Box localRow = Box.between(gutter, width, utcRow.bottom(), rowHeight);
        List<Instant> utc = ticks(ZoneOffset.UTC);
        List<Instant> local = ticks(sheet.zone());
        return new Axis(Box.between(0, width, 0, localRow.bottom()), days(dayRow), utcRow, localRow,
                labels(utc, ZoneOffset.UTC, utcRow), labels(local, sheet.zone(), localRow),
                name("UTC", utcRow), name(TEXTS.text("axis.local", "place", place(sheet.zone())), localRow), xs(utc), xs(local));
    }

    private Optional<Label> name(String text, Box row) {
        return Label.clipped(text, Box.between(PAD, gutter - PAD, row.y(), row.height()), Face.SMALL, measure);
    }

    /** The last part of a zone's name: "Reykjavik" for Atlantic/Reykjavik. */
    private static String place(ZoneId zone) {
        String id = zone.equals(ZoneOffset.UTC) ? "UTC" : zone.getId();
        return id.substring(id.lastIndexOf('/') + 1).replace('_', ' ');
    }

    private List<DayTab> days(Box row) {
        return sheet.days().stream().map(day -> tab(day, row)).filter(tab -> !tab.box().isEmpty()).toList();
    }

    private DayTab tab(SheetDay day, Box row) {
        Box box = Box.between(gutter + scale.x(day.window().start()), gutter + scale.x(day.window().end()), row.y(),
                row.height()).common(row);
        int side = measure.height(Face.SMALL) + 2;
        Box inside = box.inset(PAD, 0);
        Optional<Box> number = day.number() > KEYS || inside.width() < side ? Optional.empty()
                : Optional.of(new Box(inside.x(), box.y() + (box.height() - side) / 2, side, side));
        Box room = Box.between(number.map(n -> n.right() + 5).orElse(inside.x()), inside.right(), box.y(),
                box.height());
        return new DayTab(day, box, number, Label.clipped(DateText.inCurrent().weekday(day.date()), room, Face.STRONG, measure));
    }

    /** Counted anew from each midnight, so that a change of the clocks shifts one day only. */
    private List<Instant> ticks(ZoneId zone) {
        Window shown = scale.shown(width - gutter);
        List<Instant> ticks = new ArrayList<>();
        LocalDate date = shown.start().atZone(zone).toLocalDate();
        for (Instant midnight = midnight(date, zone); midnight.isBefore(shown.end()); date = date.plusDays(1)) {
            Instant next = midnight(date.plusDays(1), zone);
            for (Instant tick = midnight; tick.isBefore(next); tick = tick.plus(step)) {
                if (shown.contains(tick)) {
                    ticks.add(tick);
                }
            }
            midnight = next;
        }
        return ticks;
    }

    private static Instant midnight(LocalDate date, ZoneId zone) {
        return date.atStartOfDay(zone).toInstant();
    }

    private List<Label> labels(List<Instant> ticks, ZoneId zone, Box row) {
        List<Label> labels = new ArrayList<>();
        int free = row.x();
        for (Instant tick : ticks) {
            Label label = Label.centred(CLOCK.format(tick.atZone(zone)), gutter + scale.x(tick), row, Face.SMALL,
                    measure);
            if (label.box().x() >= free && label.box().right() <= row.right()) {
                labels.add(label);
                free = label.box().right() + PAD;
            }
        }
        return labels;
    }

    private List<Integer> xs(List<Instant> ticks) {
        return ticks.stream().map(tick -> gutter + scale.x(tick)).toList();
    }
}
