package org.straddle.ui.map;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.straddle.atlas.layer.UserLayer;
import org.straddle.atlas.picture.Legend;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.Part;
import org.straddle.atlas.picture.Shown;
import org.straddle.atlas.scene.DriveLine;
import org.straddle.check.Severity;
import org.straddle.drawing.Mark;
import org.straddle.ui.drawing.GcPen;
import org.straddle.ui.drawing.ScreenLetters;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** What the map can show, each with its drawing and a box to tick: legend and switches in one. */
final class LayerList {

    private static final Catalogue TEXTS = Catalogue.of(LayerList.class);


    /** One row: a part of the map, a layer of the user, or a file that could not be read. */
    private sealed interface Row {
        String words();
    }

    private record PartRow(Part part, Image image) implements Row {
        @Override
        public String words() {
            return part.label();
        }
    }

    private record LayerRow(String name, String tip, Image image) implements Row {
        @Override
        public String words() {
            return name;
        }
    }

    private record RefusedRow(String name, String reason) implements Row {
        @Override
        public String words() {
            return name;
        }
    }

    private final ScreenLetters letters;
    private final Composite body;
    private final CheckboxTableViewer table;
    private final Chooser<Optional<LocalDate>> day;
    private final Consumer<Shown> changed;
    private BiConsumer<String, Boolean> ticked = (layer, shown) -> { };
    private final List<Row> parts = new ArrayList<>();
    private final Map<String, Image> samples = new HashMap<>();
    private List<LocalDate> days = List.of();
    private List<String> known = List.of();
    private Shown shown = Shown.EVERYTHING;

    LayerList(Composite parent, ScreenLetters letters, Consumer<Shown> changed) {
        this.letters = letters;
        this.changed = changed;
        body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 4).create());
        table = CheckboxTableViewer.newCheckList(body, SWT.V_SCROLL | SWT.FULL_SELECTION);
        table.getTable().setLayoutData(GridDataFactory.fillDefaults().grab(true, true).span(2, 1).create());
        table.getTable().getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("layerList.layersMap")));
        table.setContentProvider(ArrayContentProvider.getInstance());
        table.setLabelProvider(new Labels());
        ColumnViewerToolTipSupport.enableFor(table);
        table.addCheckStateListener(change -> tick((Row) change.getElement(), change.getChecked()));
        day = new Chooser<>(body, TEXTS.text("layerList.drives"), chosen -> chosen.map(DateText.inCurrent()::weekday).orElse(
                TEXTS.text("layerList.allDays")),
                chosen -> tell(shown.on(chosen)));
        day.control().setLayoutData(GridDataFactory.fillDefaults().grab(true, false).create());
        day.offer(List.of(Optional.empty()), Optional.empty());
        for (Part part : Part.values()) {
            parts.add(new PartRow(part, sample(part.name(), Legend.sample(part))));
        }
        body.addDisposeListener(event -> samples.values().forEach(Image::dispose));
        fill(List.of());
    }

    Composite control() {
        return body;
    }

    void setFocus() {
        table.getTable().setFocus();
    }

    /** Tells of a layer that the user ticked, before the map hears of it. */
    void onTick(BiConsumer<String, Boolean> listener) {
        ticked = listener;
    }

    /**
     * @param refused files that cannot be shown, with reasons
     * @param hidden names of layers that the event does not want on the map
     */
    void show(MapContents contents, Map<String, String> refused, Set<String> hidden) {
        if (!hidden.equals(shown.hiddenLayers())) {
            known = null;
            tell(new Shown(shown.hidden(), hidden, shown.day()));
        }
        List<Row> more = new ArrayList<>();
        for (UserLayer.Laid layer : contents.layers()) {
            String role = layer.byRole().keySet().stream().findFirst().orElse("");
            more.add(new LayerRow(layer.layer().name(), tip(layer), sample("role:" + role, Legend.layer(role))));
        }
        refused.forEach((name, reason) -> more.add(new RefusedRow(name, reason)));
        List<String> now = more.stream().map(Row::toString).toList();
        if (!now.equals(known)) {
            known = now;
            fill(more);
        }
        List<LocalDate> newDays = contents.scene().drives().stream().map(DriveLine::day).distinct().sorted().toList();
        if (!newDays.equals(days)) {
            days = newDays;
            List<Optional<LocalDate>> offered = new ArrayList<>(List.of(Optional.empty()));
            days.forEach(one -> offered.add(Optional.of(one)));
            Optional<LocalDate> picked = shown.day().filter(days::contains);
            day.offer(offered, picked);
            if (!picked.equals(shown.day())) {
                tell(shown.on(picked));
            }
        }
    }

    private static String tip(UserLayer.Laid layer) {
        StringBuilder tip = new StringBuilder(layer.layer().name());
        layer.byRole().forEach((role, things) -> tip.append('\n').append(TEXTS.text("layerList.things",
                "role", role.isEmpty() ? TEXTS.text("layerList.withoutRole") : role, "count", things.full().size())));
        return tip.toString();
    }

    private void fill(List<Row> more) {
        List<Row> all = new ArrayList<>(parts);
        all.addAll(more);
        table.setInput(all);
        for (Row row : all) {
            table.setChecked(row, isShown(row));
            table.setGrayed(row, row instanceof RefusedRow);
        }
    }

    private boolean isShown(Row row) {
        return row instanceof PartRow part ? shown.shows(part.part())
                : row instanceof LayerRow layer && shown.showsLayer(layer.name());
    }

    private void tick(Row row, boolean ticked) {
        if (row instanceof PartRow part) {
            tell(shown.with(part.part(), ticked));
        } else if (row instanceof LayerRow layer) {
            this.ticked.accept(layer.name(), ticked);
            tell(shown.withLayer(layer.name(), ticked));
        } else {
            table.setChecked(row, false);
        }
    }

    private void tell(Shown newest) {
        shown = newest;
        changed.accept(newest);
    }

    private Image sample(String key, List<Mark> marks) {
        return samples.computeIfAbsent(key, made -> {
            Image image = new Image(body.getDisplay(), (int) Legend.WIDTH, (int) Legend.HEIGHT);
            GC gc = new GC(image);
            gc.setBackground(body.getDisplay().getSystemColor(SWT.COLOR_WHITE));
            gc.fillRectangle(image.getBounds());
            GcPen pen = new GcPen(gc, letters);
            marks.forEach(mark -> mark.draw(pen));
            gc.dispose();
            return image;
        });
    }

    private static final class Labels extends ColumnLabelProvider {

        @Override
        public String getText(Object row) {
            return ((Row) row).words();
        }

        @Override
        public Image getImage(Object row) {
            return row instanceof PartRow part ? part.image() : row instanceof LayerRow layer ? layer.image()
                    : Icons.of(Severity.WARNING);
        }

        @Override
        public String getToolTipText(Object row) {
            return row instanceof LayerRow layer ? layer.tip() : row instanceof RefusedRow refused ? refused.reason() : null;
        }
    }
}
