package org.straddle.daysheet.page;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.Label;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.LegendSize;
import org.straddle.daysheet.layout.TextMeasure;
import org.straddle.daysheet.layout.TimeScale;
import org.straddle.daysheet.layout.Viewport;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.Lane;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.drawing.Face;
import org.straddle.model.naming.Naming;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** Lays a sheet out on paper: each day begins a page, with as many lanes as have room, and the legend on every page. */
public final class SheetPages {

    private static final Catalogue TEXTS = Catalogue.of(SheetPages.class);

    private static final int GAP = 8;

    private final DaySheet sheet;
    private final int width;
    private final int height;
    private final TextMeasure measure;
    private final int head;

    private SheetPages(DaySheet sheet, int width, int height, TextMeasure measure) {
        this.sheet = sheet;
        this.width = width;
        this.height = height;
        this.measure = measure;
        this.head = measure.height(Face.STRONG) + GAP;
    }

    /**
     * @param width  between the margins, in the unit of the measure
     * @param height between the margins
     */
    public static List<SheetPage> of(DaySheet sheet, int width, int height, TextMeasure measure) {
        return new SheetPages(sheet, width, height, measure).pages();
    }

    private record Part(SheetDay day, List<Lane> lanes) {
    }

    private List<SheetPage> pages() {
        List<Part> parts = sheet.days().stream().filter(this::isBusy).flatMap(day -> parts(day).stream()).toList();
        List<SheetPage> pages = new ArrayList<>();
        for (Part part : parts) {
            pages.add(page(part, pages.size() + 1, parts.size()));
        }
        return List.copyOf(pages);
    }

    /** A day on which nobody is out or stops is left out, unless all are. */
    private boolean isBusy(SheetDay day) {
        return sheet.days().stream().noneMatch(this::hasSomething) || hasSomething(day);
    }

    private boolean hasSomething(SheetDay day) {
        return sheet.lanes().stream().anyMatch(lane -> lane.spans().stream()
                .anyMatch(span -> span.window().overlaps(day.window())) || lane.stops().stream()
                        .anyMatch(stop -> stop.extent().overlaps(day.window())));
    }

    private List<Part> parts(SheetDay day) {
        DaySheetLayout all = layout(day, sheet.lanes());
        int room = all.body().height();
        List<Part> parts = new ArrayList<>();
        List<Lane> lanes = new ArrayList<>();
        int taken = 0;
        for (LaneBox lane : all.lanes()) {
            if (!lanes.isEmpty() && taken + lane.strip().height() > room) {
                parts.add(new Part(day, List.copyOf(lanes)));
                lanes.clear();
                taken = 0;
            }
            lanes.add(lane.lane());
            taken += lane.strip().height();
        }
        parts.add(new Part(day, List.copyOf(lanes)));
        return parts;
    }

    private DaySheetLayout layout(SheetDay day, List<Lane> lanes) {
        DaySheet part = new DaySheet(sheet.event(), sheet.zone(), sheet.range(), sheet.busy(), sheet.days(), lanes,
                sheet.birds(), sheet.untimed());
        Duration margin = day.busy().duration().dividedBy(60);
        Window shown = new Window(day.busy().start().minus(margin), day.busy().end().plus(margin));
        TimeScale scale = TimeScale.fit(shown, width - DaySheetLayout.gutter(width));
        return DaySheetLayout.of(part, new Viewport(width, height - head, scale, 0, LegendSize.FULL), measure);
    }

    private SheetPage page(Part part, int number, int of) {
        String count = TEXTS.text("page.count", "number", number, "pages", of);
        int countWidth = measure.width(count, Face.SMALL);
        String title = TEXTS.text("page.title", "event", Naming.name(sheet.event()),
                "date", DateText.inCurrent().heading(part.day().date()), "zone", sheet.zone().getId());
        Box line = new Box(0, 0, width - countWidth - 2 * GAP, head - GAP);
        return new SheetPage(Label.clipped(title, line, Face.STRONG, measure).orElseThrow(),
                Label.clipped(count, new Box(width - countWidth, 0, countWidth, head - GAP), Face.SMALL, measure)
                        .orElseThrow(),
                Box.between(0, width, head, height - head), layout(part.day(), part.lanes()));
    }
}
