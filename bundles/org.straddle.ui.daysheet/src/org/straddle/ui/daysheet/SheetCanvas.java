package org.straddle.ui.daysheet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.straddle.daysheet.fits.Carried;
import org.straddle.daysheet.fits.Grip;
import org.straddle.daysheet.fits.Landing;
import org.straddle.daysheet.layout.Box;
import org.straddle.daysheet.layout.DaySheetLayout;
import org.straddle.daysheet.layout.LegendSize;
import org.straddle.daysheet.layout.Overlay;
import org.straddle.daysheet.layout.OverlayLayout;
import org.straddle.daysheet.layout.SheetPart;
import org.straddle.daysheet.layout.Sight;
import org.straddle.daysheet.layout.TextMeasure;
import org.straddle.daysheet.layout.Viewport;
import org.straddle.daysheet.paint.Highlight;
import org.straddle.daysheet.paint.SheetPainter;
import org.straddle.daysheet.paint.Surface;
import org.straddle.daysheet.sheet.DaySheet;
import org.straddle.daysheet.sheet.SheetDay;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.parts.PictureAccess;
import org.straddle.ui.session.Computed;
import org.straddle.words.Catalogue;

/** The sheet on the screen. Whatever changes only drops the layout; the next paint makes it anew. */
final class SheetCanvas {

    private static final Catalogue TEXTS = Catalogue.of(SheetCanvas.class);

    /** Keys that are held down must not pile up edits that come long after. */
    private static final int MOST_WAITING = 20;

    private final Canvas canvas;
    private final ScreenLetters letters;
    private final TextMeasure measure;
    private final SheetPainter painter;
    private final Sight sight = new Sight();
    private final SheetScroll scroll;
    private final PictureAccess access;
    private final SheetMouse mouse;
    private final Consumer<Identified> chosen;
    private final Consumer<Identified> opened;
    private Reading reading;
    private DaySheetLayout layout;
    private Set<String> highlighted = Set.of();
    private SheetItem selected;
    private String note = "";
    private String message = "";
    private boolean trouble;
    private LegendSize legend = LegendSize.FITTING;
    private SheetDrag drag;
    private boolean behind;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private Consumer<Landing> dropped = landing -> { };

    /**
     * @param chosen told of the stop, turn or team that the user chose, an object of the snapshot; null for nothing
     * @param opened told of what the user wants to edit
     */
    SheetCanvas(Composite parent, Consumer<Identified> chosen, Consumer<Identified> opened) {
        this.chosen = chosen;
        this.opened = opened;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND | SWT.H_SCROLL | SWT.V_SCROLL);
        letters = new ScreenLetters(canvas, 1);
        measure = TextMeasure.of(letters);
        painter = new SheetPainter(measure);
        scroll = new SheetScroll(canvas, sight, this::changed);
        access = new PictureAccess(canvas, new SheetEntries(this));
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.Resize, event -> resized());
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        new SheetKeys(this);
        mouse = new SheetMouse(this);
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
        letFall();
        Optional<Window> before = selected().map(SheetItem::window);
        reading = newer;
        DaySheet sheet = newer.sheet().orElseThrow();
        resized();
        sight.show(sheet);
        selected = highlighted.stream().flatMap(id -> sheet.item(id).stream()).findFirst().orElse(null);
        changed();
        selected().filter(item -> before.filter(item.window()::equals).isEmpty()).ifPresent(this::bring);
        access.changed();
        mouse.forget();
        behind = false;
        // One at a time: each may change the plan, and the next waits for the reading after it.
        while (!behind && !waiting.isEmpty()) {
            waiting.poll().run();
        }
    }

    void clear() {
        letFall();
        behind = false;
        waiting.clear();
        message = "";
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

    void legend(LegendSize size) {
        legend = size;
        changed();
    }

    LegendSize legend() {
        return legend;
    }

    /** Tells something at the foot of the lanes, and to screen readers. */
    void say(String words, boolean isTrouble) {
        message = words;
        trouble = isTrouble;
        canvas.redraw();
        access.said(words);
    }

    String said() {
        return message;
    }

    /** The plan has been changed and a newer reading is on its way. */
    void behind() {
        behind = true;
    }

    boolean isBehind() {
        return behind;
    }

    /** Does something with the sheet as the plan is now: at once, or when the reading that is on its way is there. */
    void whenUpToDate(Runnable deed) {
        if (!behind) {
            deed.run();
        } else if (waiting.size() < MOST_WAITING) {
            waiting.add(deed);
        }
    }

    /** @param hears of where things are put down */
    void onDrop(Consumer<Landing> hears) {
        dropped = hears;
    }

    /** Lifts a stop or turn, or takes one end of it; false if it cannot be lifted. */
    boolean lift(SheetItem item, Grip grip, int x) {
        if (behind || reading == null) {
            return false;
        }
        Optional<Carried> carried = carried(item, grip);
        if (item.thing() instanceof Stop stop ? stop.isPinned() : ((Turn) item.thing()).isPinned()) {
            say(TEXTS.text("sheetCanvas.pinnedLetGo", "thing", Naming.name(item.thing())), true);
        } else if (carried.isEmpty()) {
            say(TEXTS.text("sheetCanvas.lacksTeamSite", "thing", Naming.name(item.thing())), true);
        } else {
            message = "";
            drag = new SheetDrag(this, item, carried.get(), sight.scale().at(x - gutter()));
            return true;
        }
        return false;
    }

    Optional<Carried> carried(SheetItem item, Grip grip) {
        Outlook outlook = reading.computed().outlook();
        return item.thing() instanceof Stop stop ? Carried.stop(outlook, stop, grip)
                : Carried.turn(outlook, (Turn) item.thing(), grip);
    }

    /** The outlook that the sheet was read from. */
    Optional<Outlook> outlook() {
        return Optional.ofNullable(reading).map(Reading::computed).map(Computed::outlook);
    }

    boolean isDragging() {
        return drag != null;
    }

    void drag(int x, int y, boolean free) {
        layout().ifPresent(laid -> drag.move(laid, x, y, free));
        canvas.redraw();
    }

    /** Something about a drag has changed. */
    void dragged(SheetDrag changed) {
        if (changed == drag && !canvas.isDisposed()) {
            canvas.redraw();
        }
    }

    Optional<SheetDrag> dragged() {
        return Optional.ofNullable(drag);
    }

    void drop() {
        Optional<Landing> landing = drag.landing();
        letFall();
        landing.ifPresent(dropped);
    }

    /** Ends dragging without a change. */
    void letFall() {
        if (drag != null) {
            drag.end();
            drag = null;
            canvas.setCursor(null);
            canvas.redraw();
        }
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
        point(item);
        bring(item);
    }

    /** The user chooses what is under the hand: the sight stays as it is. */
    void point(SheetItem item) {
        selected = item;
        message = "";
        highlighted = Set.of(item.id());
        canvas.redraw();
        chosen.accept(item.thing());
        access.selected();
    }

    /** Chooses a stop or turn that a reading to come will hold. */
    void chooseLater(String id) {
        highlighted = Set.of(id);
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
        painter.paint(new Surface(new GcPen(gc, letters), letters), laid, Highlight.NONE, Overlay.NONE, "");
    }

    private DaySheetLayout layout(int width, int height, int top) {
        return DaySheetLayout.of(sheet().orElseThrow(), new Viewport(width, height, sight.scale(), top, legend),
                measure);
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
        layout().ifPresentOrElse(laid -> painter.paint(new Surface(new GcPen(gc, letters), letters), laid, highlight, overlay(laid), note), () -> {
            Rectangle all = canvas.getClientArea();
            gc.setBackground(canvas.getBackground());
            gc.fillRectangle(all);
        });
    }

    Overlay overlay(DaySheetLayout laid) {
        return OverlayLayout.of(laid, dragged().map(SheetDrag::carry), drag == null ? message : "", trouble, measure);
    }

    private Point size() {
        Rectangle area = canvas.getClientArea();
        return new Point(Math.max(1, area.width), Math.max(1, area.height));
    }

    Optional<Box> place(SheetItem item) {
        return layout().flatMap(laid -> laid.find(item.id())).map(SheetPart::box);
    }
}
