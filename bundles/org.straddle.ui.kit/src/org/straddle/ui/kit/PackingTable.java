package org.straddle.ui.kit;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.straddle.kit.Packed;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.SinglePoint;
import org.straddle.model.KitItem;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Times;

/** The rows of a packing list, each with a tick box that the Space key works. */
final class PackingTable {

    private final CheckboxTableViewer rows;
    private final Composite frame;
    private final Map<KitItem, SinglePoint> singlePoints = new HashMap<>();
    private ZoneId zone = ZoneId.of("UTC");

    /**
     * @param tick called with rows to tick or clear; a box changes only when the list that comes back says so
     * @param open called with a row to open
     */
    PackingTable(Composite parent, BiConsumer<List<PackingRow>, Boolean> tick, Consumer<PackingRow> open) {
        frame = new Composite(parent, SWT.NONE);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        rows = CheckboxTableViewer.newCheckList(frame, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        rows.getTable().setHeaderVisible(true);
        rows.getTable().setLinesVisible(true);
        rows.setContentProvider(ArrayContentProvider.getInstance());
        column(layout, "Item", SWT.LEFT, 26, PackingRow::name);
        column(layout, "Count", SWT.RIGHT, 7, row -> Integer.toString(row.count()));
        column(layout, "Role", SWT.LEFT, 11, row -> row.role().getLiteral());
        column(layout, "For", SWT.LEFT, 12, PackingRow::modesText);
        column(layout, "Spare for", SWT.LEFT, 16, row -> row.spareFor().orElse(""));
        spareColumn(layout);
        column(layout, "Weight", SWT.RIGHT, 9, PackingRow::weightText);
        column(layout, "Packed by", SWT.LEFT, 13, row -> row.packed().map(Packed::by).orElse(""));
        column(layout, "Packed at", SWT.LEFT, 16,
                row -> row.packed().flatMap(Packed::at).map(at -> Times.local(at, zone)).orElse(""));
        rows.setCheckStateProvider(new ICheckStateProvider() {
            @Override
            public boolean isChecked(Object row) {
                return ((PackingRow) row).packed().isPresent();
            }

            @Override
            public boolean isGrayed(Object row) {
                return false;
            }
        });
        rows.addCheckStateListener(change -> tick.accept(together((PackingRow) change.getElement()),
                change.getChecked()));
        rows.addOpenListener(opening -> chosen().stream().findFirst().ifPresent(open));
    }

    Control control() {
        return rows.getTable();
    }

    List<PackingRow> chosen() {
        return Stream.of(rows.getStructuredSelection().toArray()).map(PackingRow.class::cast).toList();
    }

    /** Shows the list, and keeps what is selected and in sight. */
    void show(PackingList list, ZoneId eventZone) {
        zone = eventZone;
        singlePoints.clear();
        list.singlePoints().forEach(point -> singlePoints.put(point.item(), point));
        List<KitItem> selected = chosen().stream().map(PackingRow::item).toList();
        int top = rows.getTable().getTopIndex();
        rows.getTable().setRedraw(false);
        rows.setInput(list.rows());
        rows.setSelection(new StructuredSelection(
                list.rows().stream().filter(row -> selected.contains(row.item())).toList()));
        rows.getTable().setTopIndex(top);
        rows.getTable().setRedraw(true);
    }

    /** A box in the midst of several selected rows works for all of them. */
    private List<PackingRow> together(PackingRow row) {
        List<PackingRow> chosen = chosen();
        return chosen.contains(row) ? chosen : List.of(row);
    }

    private void column(TableColumnLayout layout, String heading, int side, int weight,
            Function<PackingRow, String> text) {
        add(layout, heading, side, weight, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((PackingRow) row);
            }

            @Override
            public String getToolTipText(Object row) {
                return ((PackingRow) row).note();
            }
        });
    }

    private void spareColumn(TableColumnLayout layout) {
        add(layout, "Without it", SWT.LEFT, 18, new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                SinglePoint point = point(row);
                return point == null ? "" : "no spare: stops " + point.modesText();
            }

            @Override
            public Image getImage(Object row) {
                return point(row) == null ? null : Icons.image("warning");
            }

            private SinglePoint point(Object row) {
                return singlePoints.get(((PackingRow) row).item());
            }
        });
    }

    private void add(TableColumnLayout layout, String heading, int side, int weight, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(rows, side);
        column.getColumn().setText(heading);
        column.setLabelProvider(Objects.requireNonNull(labels));
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, weight * 6, true));
    }
}
