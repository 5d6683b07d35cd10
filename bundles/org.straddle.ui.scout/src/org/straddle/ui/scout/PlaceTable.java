package org.straddle.ui.scout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.grid.MapRole;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.places.ShownPlace;
import org.straddle.ui.things.Icons;

/** Places line by line, of which there may be many thousands; a click on a head sorts by it, a second one the other way. */
final class PlaceTable {

    private final Table table;
    private List<PlaceColumn> columns = List.of();
    private List<ShownPlace> ranked = List.of();
    private List<ShownPlace> rows = List.of();

    PlaceTable(Composite parent, Consumer<Optional<ShownPlace>> chosen, Consumer<ShownPlace> opened) {
        table = new Table(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        table.addListener(SWT.SetData, asked -> fill((TableItem) asked.item));
        table.addListener(SWT.Selection, choice -> chosen.accept(chosen().stream().findFirst()));
        table.addListener(SWT.DefaultSelection, choice -> chosen().stream().findFirst().ifPresent(opened));
    }

    Table control() {
        return table;
    }

    void show(List<ShownPlace> places, List<MapRole> around) {
        ranked = List.copyOf(places);
        rows = ranked;
        List<PlaceColumn> wanted = PlaceColumn.of(around);
        if (!wanted.stream().map(PlaceColumn::title).toList().equals(columns.stream().map(PlaceColumn::title).toList())) {
            columns = wanted;
            makeColumns();
        }
        columns = wanted;
        table.setSortColumn(table.getColumn(0));
        table.setSortDirection(SWT.UP);
        table.deselectAll();
        refill();
        if (!rows.isEmpty()) {
            table.setTopIndex(0);
        }
    }

    private void makeColumns() {
        for (TableColumn old : table.getColumns()) {
            old.dispose();
        }
        for (PlaceColumn column : columns) {
            TableColumn made = new TableColumn(table, column.number() ? SWT.RIGHT : SWT.LEFT);
            made.setText(column.title());
            made.setToolTipText(column.tip());
            made.setWidth(column.width());
            made.setMoveable(true);
            made.addListener(SWT.Selection, click -> sort(made));
        }
    }

    private void sort(TableColumn by) {
        boolean again = table.getSortColumn() == by && table.getSortDirection() == SWT.UP;
        table.setSortColumn(by);
        table.setSortDirection(again ? SWT.DOWN : SWT.UP);
        PlaceColumn column = columns.get(table.indexOf(by));
        List<ShownPlace> sorted = new ArrayList<>(ranked);
        sorted.sort(again ? column.order().reversed() : column.order());
        Optional<ShownPlace> kept = chosen().stream().findFirst();
        rows = sorted;
        refill();
        kept.ifPresent(this::choose);
    }

    private void refill() {
        table.setItemCount(rows.size());
        table.clearAll();
    }

    private void fill(TableItem row) {
        ShownPlace place = rows.get(table.indexOf(row));
        for (int i = 0; i < columns.size(); i++) {
            row.setText(i, columns.get(i).text().apply(place));
        }
        row.setImage(1, Icons.image(switch (place.candidate().candidate().kind()) {
            case CORNER -> "site-corner";
            case CROSSING, ALONGSIDE -> "site-line";
        }));
    }

    List<ShownPlace> rows() {
        return rows;
    }

    List<ShownPlace> chosen() {
        List<ShownPlace> chosen = new ArrayList<>();
        for (int index : table.getSelectionIndices()) {
            chosen.add(rows.get(index));
        }
        return chosen;
    }

    /** Selects the row of a place and scrolls to it, unless it is among those selected. */
    void choose(ShownPlace place) {
        int index = rows.indexOf(place);
        if (index >= 0 && !table.isSelected(index)) {
            table.setSelection(index);
            table.showSelection();
        }
    }
}
