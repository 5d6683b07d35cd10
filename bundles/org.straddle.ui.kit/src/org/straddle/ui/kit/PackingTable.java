package org.straddle.ui.kit;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ICheckStateProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.model.KitItem;
import org.straddle.model.Tick;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TableFrame;
import org.straddle.ui.session.UiThread;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** The rows of a packing list, each with a tick box that the Space key works. */
final class PackingTable {

    private static final Catalogue TEXTS = Catalogue.of(PackingTable.class);

    private final CheckboxTableViewer rows;
    private final Composite frame;
    private final List<PackingRow> pressed = new ArrayList<>();
    private final Map<String, String> losses = new HashMap<>();
    private TickKind kind = TickKind.PACKED;
    private ZoneId zone = ZoneId.of("UTC");

    /**
     * @param tick called with rows to tick or clear; a box changes only when the list that comes back says so
     * @param open called with a row to open
     */
    PackingTable(Composite parent, BiConsumer<List<PackingRow>, Boolean> tick, Consumer<PackingRow> open) {
        frame = new TableFrame(parent);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        rows = CheckboxTableViewer.newCheckList(frame, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        rows.getTable().getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("packingTable.packingList")));
        rows.getTable().setHeaderVisible(true);
        OnceSized.show(rows.getTable());
        rows.getTable().setLinesVisible(true);
        rows.setContentProvider(ArrayContentProvider.getInstance());
        column(layout, TEXTS.text("packingTable.item"), SWT.LEFT, 34, row -> row.note().isEmpty() ? row.name() : row.name() + " – " + row.note());
        column(layout, TEXTS.text("packingTable.count"), SWT.RIGHT, 7, row -> Integer.toString(row.count()));
        column(layout, TEXTS.text("packingTable.role"), SWT.LEFT, 10, row -> Naming.of(row.role()));
        column(layout, TEXTS.text("packingTable.for"), SWT.LEFT, 10, row -> row.modes().isEmpty() ? TEXTS.text("packingTable.all") : row.modesText());
        column(layout, TEXTS.text("packingTable.spare"), SWT.LEFT, 18, row -> row.spareFor().orElse(""));
        failureColumn(layout);
        column(layout, TEXTS.text("packingTable.weight"), SWT.RIGHT, 8, PackingRow::weightText);
        column(layout, TEXTS.text("packingTable.bag"), SWT.LEFT, 10, row -> row.item().getBag() == null ? "" : row.item().getBag());
        for (TickKind each : TickKind.values()) {
            column(layout, TEXTS.text(each), SWT.LEFT, 9, row -> ticked(row, each));
        }
        rows.setCheckStateProvider(new ICheckStateProvider() {
            @Override
            public boolean isChecked(Object row) {
                return kind.of(((PackingRow) row).item()) != null;
            }

            @Override
            public boolean isGrayed(Object row) {
                return false;
            }
        });
        rows.addCheckStateListener(change -> pressed((PackingRow) change.getElement(), change.getChecked(), tick));
        rows.addOpenListener(opening -> chosen().stream().findFirst().ifPresent(open));
    }

    Control control() {
        return rows.getTable();
    }

    List<PackingRow> chosen() {
        return Stream.of(rows.getStructuredSelection().toArray()).map(PackingRow.class::cast).toList();
    }

    /** Which tick the boxes show. */
    void boxes(TickKind chosen) {
        kind = chosen;
        rows.refresh();
    }

    TickKind boxes() {
        return kind;
    }

    /** @param stops by id of the item, what is lost when it fails */
    void losses(Map<String, String> stops) {
        losses.clear();
        losses.putAll(stops);
        rows.refresh();
    }

    /** Shows the list, and keeps what is selected and in sight; the first row is where the keyboard starts. */
    void show(PackingList list, ZoneId eventZone) {
        zone = eventZone;
        List<KitItem> selected = chosen().stream().map(PackingRow::item).toList();
        int top = rows.getTable().getTopIndex();
        rows.getTable().setRedraw(false);
        rows.setInput(list.rows());
        List<PackingRow> again = list.rows().stream().filter(row -> selected.contains(row.item())).toList();
        rows.setSelection(new StructuredSelection(again.isEmpty() ? list.rows().subList(0, 1) : again));
        rows.getTable().setTopIndex(top);
        rows.getTable().setRedraw(true);
    }

    /** The Space key presses the box of every selected row, one after the other; they become one step. */
    private void pressed(PackingRow row, boolean packed, BiConsumer<List<PackingRow>, Boolean> tick) {
        pressed.add(row);
        if (pressed.size() == 1) {
            UiThread.later(frame, () -> {
                List<PackingRow> together = List.copyOf(pressed);
                pressed.clear();
                if (!frame.isDisposed()) {
                    tick.accept(together, packed);
                }
            });
        }
    }

    private String ticked(PackingRow row, TickKind each) {
        TimeText times = TimeText.of(zone);
        Tick tick = each.of(row.item());
        return tick == null ? "" : TEXTS.text("packingTable.tick", "by", tick.getBy() == null ? "" : tick.getBy().strip(), "at",
                tick.getAt() == null ? "" : TEXTS.text("packingTable.at", "day", times.weekday(tick.getAt()), "time",
                        times.clock(tick.getAt())));
    }

    private void column(TableColumnLayout layout, String heading, int side, int weight,
            Function<PackingRow, String> text) {
        add(layout, heading, side, weight, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((PackingRow) row);
            }
        });
    }

    private void failureColumn(TableColumnLayout layout) {
        add(layout, TEXTS.text("packingTable.ifFails"), SWT.LEFT, 20, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return losses.getOrDefault(((PackingRow) row).item().getId(), "");
            }

            @Override
            public Image getImage(Object row) {
                return getText(row).isEmpty() ? null : Icons.image("warning");
            }
        });
    }

    /** Headings are never cut off. */
    private int wide(String heading) {
        GC measure = new GC(rows.getTable());
        int wide = measure.textExtent(heading).x + 24;
        measure.dispose();
        return wide;
    }

    private void add(TableColumnLayout layout, String heading, int side, int weight, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(rows, side);
        column.getColumn().setText(heading);
        column.setLabelProvider(labels);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, Math.max(weight * 5, wide(heading)), true));
    }
}
