package org.straddle.ui.passes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.ConfigRegistry;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.data.IColumnAccessor;
import org.eclipse.nebula.widgets.nattable.data.IDataProvider;
import org.eclipse.nebula.widgets.nattable.data.ListDataProvider;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.DefaultColumnHeaderDataLayer;
import org.eclipse.nebula.widgets.nattable.hideshow.ColumnHideShowLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.layer.cell.ColumnOverrideLabelAccumulator;
import org.eclipse.nebula.widgets.nattable.reorder.ColumnReorderLayer;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionModel;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionProvider;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.config.DefaultSelectionLayerConfiguration;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionBindings;
import org.eclipse.nebula.widgets.nattable.sort.SortHeaderLayer;
import org.eclipse.nebula.widgets.nattable.sort.config.SingleClickSortConfiguration;
import org.eclipse.nebula.widgets.nattable.style.CellStyleAttributes;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.style.HorizontalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.style.Style;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.widgets.Composite;
import org.straddle.ui.parts.HeaderRoom;

/** Hundreds of passes as a table that sorts, hides and reorders its columns. */
final class PassTable {

    private static final String NUMBER = "number";

    private final List<PassRow> shown = new ArrayList<>();
    private final ListDataProvider<PassRow> data = new ListDataProvider<>(shown, new Cells());
    private final PassOrder order = new PassOrder(this::arrange);
    private final NatTable table;
    private final ColumnHideShowLayer columns;
    private final RowSelectionProvider<PassRow> selection;
    private List<PassRow> all = List.of();
    private Predicate<PassRow> wanted = row -> true;

    PassTable(Composite parent) {
        DataLayer body = new DataLayer(data);
        ColumnOverrideLabelAccumulator labels = new ColumnOverrideLabelAccumulator(body);
        for (int i = 0; i < PassRow.COLUMNS.size(); i++) {
            body.setColumnWidthByPosition(i, HeaderRoom.least(parent, PassRow.COLUMNS.get(i).title(), PassRow.COLUMNS.get(i).width()));
            if (PassRow.COLUMNS.get(i).number()) {
                labels.registerColumnOverrides(i, NUMBER);
            }
        }
        body.setConfigLabelAccumulator(labels);
        body.setDefaultRowHeight(24);
        columns = new ColumnHideShowLayer(new ColumnReorderLayer(body));
        SelectionLayer selected = new SelectionLayer(columns, false);
        selected.setSelectionModel(new RowSelectionModel<>(selected, data, PassRow::id));
        selected.addConfiguration(new DefaultSelectionLayerConfiguration());
        ViewportLayer viewport = new ViewportLayer(selected);
        viewport.setRegionName(GridRegion.BODY);
        DataLayer titles = new DefaultColumnHeaderDataLayer(new Titles());
        titles.setDefaultRowHeight(28);
        ColumnHeaderLayer header = new ColumnHeaderLayer(titles, viewport, selected);
        CompositeLayer whole = new CompositeLayer(1, 2);
        ConfigRegistry config = new ConfigRegistry();
        whole.setChildLayer(GridRegion.COLUMN_HEADER, new SortHeaderLayer<PassRow>(header, order), 0, 0);
        whole.setChildLayer(GridRegion.BODY, viewport, 0, 1);
        table = new NatTable(parent, whole, false);
        table.setConfigRegistry(config);
        table.addConfiguration(new DefaultNatTableStyleConfiguration());
        table.addConfiguration(new SingleClickSortConfiguration());
        table.addConfiguration(new RowOnlySelectionBindings());
        table.configure();
        table.setTheme(new PassTableLook());
        Style right = new Style();
        right.setAttributeValue(CellStyleAttributes.HORIZONTAL_ALIGNMENT, HorizontalAlignmentEnum.RIGHT);
        config.registerConfigAttribute(CellConfigAttributes.CELL_STYLE, right, DisplayMode.NORMAL, NUMBER);
        selection = new RowSelectionProvider<>(selected, data, false);
    }

    NatTable control() {
        return table;
    }

    RowSelectionProvider<PassRow> selection() {
        return selection;
    }

    ColumnHideShowLayer columns() {
        return columns;
    }

    /** The rows as they stand, filtered and sorted. */
    List<PassRow> rows() {
        return List.copyOf(shown);
    }

    void show(List<PassRow> passes) {
        all = passes;
        arrange();
    }

    void filter(Predicate<PassRow> which) {
        wanted = which;
        arrange();
    }

    private void arrange() {
        shown.clear();
        all.stream().filter(wanted).sorted(order.comparator()).forEach(shown::add);
        if (table != null && !table.isDisposed()) {
            table.refresh();
        }
    }

    private static final class Cells implements IColumnAccessor<PassRow> {

        @Override
        public Object getDataValue(PassRow row, int column) {
            return PassRow.COLUMNS.get(column).text().apply(row);
        }

        @Override
        public void setDataValue(PassRow row, int column, Object value) {
            throw new UnsupportedOperationException("passes are worked out, not entered");
        }

        @Override
        public int getColumnCount() {
            return PassRow.COLUMNS.size();
        }
    }

    private static final class Titles implements IDataProvider {

        @Override
        public Object getDataValue(int column, int row) {
            return PassRow.COLUMNS.get(column).title();
        }

        @Override
        public void setDataValue(int column, int row, Object value) {
            throw new UnsupportedOperationException("titles stay");
        }

        @Override
        public int getColumnCount() {
            return PassRow.COLUMNS.size();
        }

        @Override
        public int getRowCount() {
            return 1;
        }
    }
}
