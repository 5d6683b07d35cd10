package org.straddle.ui.daysheet;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.model.Identified;
import org.straddle.ui.daysheet.layout.Box;
import org.straddle.ui.daysheet.layout.DaySheetLayout;
import org.straddle.ui.daysheet.layout.SheetPart;
import org.straddle.ui.daysheet.layout.Viewport;
import org.straddle.ui.daysheet.paint.Highlight;
import org.straddle.ui.daysheet.paint.SheetFonts;
import org.straddle.ui.daysheet.paint.SheetPainter;
import org.straddle.ui.daysheet.sheet.DaySheet;
import org.straddle.ui.daysheet.sheet.SheetDay;
import org.straddle.ui.daysheet.sheet.SheetItem;

/** The sheet on the screen. Whatever changes only drops the layout; the next paint makes it anew. */
final class SheetCanvas {

    private final Canvas canvas;
    private final SheetFonts fonts;
    private final SheetPainter painter;
    private final Sight sight = new Sight();
    private final SheetScroll scroll;
    private final SheetAccess access;
    private final Consumer<Identified> chosen;
    private final Consumer<Identified> opened;
    private Reading reading;
    private DaySheetLayout layout;
    private Set<String> highlighted = Set.of();
    private SheetItem selected;
    private String note = "";
    private boolean legend = true;

    /**
     * @param chosen told of the stop, turn or team that the user chose, an object of the snapshot; null for nothing
     * @param opened told of what the user wants to edit
     */
    SheetCanvas(Composite parent, Consumer<Identified> chosen, Consumer<Identified> opened) {
        this.chosen = chosen;
        this.opened = opened;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.H_SCROLL | SWT.V_SCROLL);
        fonts = new SheetFonts(canvas);
        painter = new SheetPainter(fonts);
        scroll = new SheetScroll(canvas, sight, this::changed);
        access = new SheetAccess(this);
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> resized());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        new SheetKeys(this);
        new SheetMouse(this);
    }

    Canvas control() {
        return canvas;
    }

    Sight sight() {
        return sight;
    }

    SheetScroll scroll() {
        return scroll;
    }

    /** Shows another reading, which has a sheet; what was selected stays selected if it is still there. */
    void show(Reading newer) {
        reading = newer;
        DaySheet sheet = newer.sheet().orElseThrow();
        resized();
        sight.show(sheet);
        selected = selected().flatMap(item -> sheet.item(item.id())).orElse(null);
        changed();
        access.changed();
    }

    void clear() {
        reading = null;
        selected = null;
        sight.clear();
        changed();
    }

    /** A word in the corner; empty for none. */
    void note(String words) {
        note = words;
        canvas.redraw();
    }

    void legend(boolean shown) {
        legend = shown;
        changed();
    }

    Optional<DaySheet> sheet() {
        return sight.sheet();
    }

    Optional<SheetItem> selected() {
        return Optional.ofNullable(selected);
    }

    Optional<Wording> wording() {
        return Optional.ofNullable(reading).map(Reading::wording);
    }

    /** The user chooses a stop or a turn. */
    void choose(SheetItem item) {
        selected = item;
        highlighted = Set.of(item.id());
        bring(item);
        chosen.accept(item.thing());
        access.selected();
    }

    void choose(Identified team) {
        selected = null;
        highlighted = Set.of(team.getId());
        canvas.redraw();
        chosen.accept(team);
    }

    void chooseNothing() {
        selected = null;
        highlighted = Set.of();
        canvas.redraw();
        chosen.accept(null);
    }

    void open(Identified thing) {
        opened.accept(thing);
    }

    /** Something is selected elsewhere: shows it here, and the first stop or turn of it. */
    void follow(Set<String> ids) {
        highlighted = ids;
        selected = sheet().flatMap(sheet -> sheet.items().stream().filter(item -> ids.contains(item.id()))
                .findFirst()).orElse(null);
        selected().ifPresentOrElse(this::bring, () -> bringLane(ids));
        access.selected();
    }

    void show(SheetDay day) {
        sight.fit(day);
        changed();
    }

    /** The sight has been changed. */
    void changed() {
        layout = null;
        scroll.update();
        canvas.redraw();
    }

    Optional<SheetPart> at(int x, int y) {
        return layout().flatMap(laid -> laid.at(x, y));
    }

    /** Right edge of the lanes' heads. */
    int gutter() {
        return DaySheetLayout.gutter(canvas.getClientArea().width);
    }

    Optional<DaySheetLayout> layout() {
        if (layout == null && sheet().isPresent()) {
            Point size = size();
            layout = layout(size.x, size.y, scroll.top());
            if (scroll.update(layout)) {
                layout = layout(size.x, size.y, scroll.top());
            }
        }
        return Optional.ofNullable(layout);
    }

    /** The time in sight with all lanes and the legend, for a picture. */
    DaySheetLayout whole() {
        int width = size().x;
        DaySheetLayout flat = layout(width, 0, 0);
        int height = flat.axis().box().height() + flat.lanesHeight();
        int legendHeight = layout(width, 3 * height + 3 * size().y, 0).legend().box().height();
        return layout(width, height + legendHeight, 0);
    }

    void paint(GC gc, DaySheetLayout laid) {
        painter.paint(gc, laid, Highlight.NONE, "");
    }

    private DaySheetLayout layout(int width, int height, int top) {
        return DaySheetLayout.of(sheet().orElseThrow(), new Viewport(width, height, sight.scale(), top, legend),
                fonts);
    }

    private void bring(SheetItem item) {
        sight.bring(item.window());
        changed();
        layout().ifPresent(laid -> laid.find(item.id()).ifPresent(part -> scroll.bring(part.box(), laid.body())));
        changed();
    }

    private void bringLane(Set<String> ids) {
        layout().ifPresent(laid -> laid.lanes().stream()
                .filter(lane -> lane.lane().team().filter(team -> ids.contains(team.getId())).isPresent()).findFirst()
                .ifPresent(lane -> scroll.bring(lane.strip(), laid.body())));
        canvas.redraw();
    }

    private void resized() {
        sight.resize(canvas.getClientArea().width - gutter());
        changed();
    }

    private void paint(GC gc) {
        Highlight highlight = new Highlight(highlighted, canvas.isFocusControl());
        layout().ifPresentOrElse(laid -> painter.paint(gc, laid, highlight, note), () -> {
            Rectangle all = canvas.getClientArea();
            gc.setBackground(canvas.getBackground());
            gc.fillRectangle(all);
        });
    }

    private Point size() {
        Rectangle area = canvas.getClientArea();
        return new Point(Math.max(1, area.width), Math.max(1, area.height));
    }

    Optional<Box> place(SheetItem item) {
        return layout().flatMap(laid -> laid.find(item.id())).map(SheetPart::box);
    }
}
