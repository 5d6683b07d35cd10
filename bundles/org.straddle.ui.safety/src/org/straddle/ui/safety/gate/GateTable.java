package org.straddle.ui.safety.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.TableCursor;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.GateKind;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TableFrame;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** One column for each team and day, one row for each item; the arrow keys go from cell to cell. */
final class GateTable {

    private static final Catalogue TEXTS = Catalogue.of(GateTable.class);

    /** Rows above the items: the day, and the gate as a whole. */
    private static final int HEAD_ROWS = 2;
    private static final int MARGIN = 2;

    /** What the keys do in a cell. */
    interface Deeds {

        void chosen();

        void open();

        void settle();

        void withdraw();
    }

    private final Composite frame;
    private final Table table;
    private final TableCursor cursor;
    private final Deeds deeds;
    private List<DepartureGate> gates = List.of();

    GateTable(Composite parent, Deeds deeds) {
        this.deeds = deeds;
        frame = new TableFrame(parent);
        frame.setLayout(new FillLayout());
        table = new Table(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        table.setLinesVisible(true);
        cursor = new TableCursor(table, SWT.NONE);
        cursor.setBackground(table.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
        cursor.setForeground(table.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT));
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(row -> table.deselectAll()));
        cursor.addSelectionListener(SelectionListener.widgetSelectedAdapter(moved -> {
            table.deselectAll();
            deeds.chosen();
        }));
        cursor.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(pressed -> deeds.open()));
        cursor.addKeyListener(KeyListener.keyPressedAdapter(this::pressed));
        cursor.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent asked) {
                asked.result = spoken();
            }
        });
    }

    private void pressed(KeyEvent key) {
        if (key.character == ' ') {
            deeds.settle();
        } else if (key.keyCode == SWT.DEL) {
            deeds.withdraw();
        }
    }

    Control control() {
        return frame;
    }

    /** The control that has the keys. */
    Control keys() {
        return cursor;
    }

    void setMenu(Menu menu) {
        cursor.setMenu(menu);
        table.setMenu(menu);
    }

    /** The gate of the cell with the keys; empty in the column of names. */
    Optional<DepartureGate> gate() {
        int column = cursor.getRow() == null ? 0 : cursor.getColumn();
        return column < 1 || column > gates.size() ? Optional.empty() : Optional.of(gates.get(column - 1));
    }

    /** The item of the cell; empty in the rows about the gate as a whole. */
    Optional<GateItem> item() {
        int row = row();
        return row < HEAD_ROWS ? Optional.empty() : gate().map(gate -> gate.items().get(row - HEAD_ROWS));
    }

    private int row() {
        return cursor.getRow() == null || cursor.getRow().isDisposed() ? -1 : table.indexOf(cursor.getRow());
    }

    /** The same cell keeps the keys; at first it is the first that is open. */
    void show(List<DepartureGate> shown) {
        Optional<DepartureGate> before = gate();
        int row = row();
        gates = List.copyOf(shown);
        table.setRedraw(false);
        columns();
        rows();
        table.setRedraw(true);
        int column = before.flatMap(this::column).orElse(0);
        if (row >= 0 && column > 0) {
            choose(row, column);
        } else {
            firstOpen();
        }
    }

    private Optional<Integer> column(DepartureGate before) {
        for (int at = 0; at < gates.size(); at++) {
            if (gates.get(at).day().equals(before.day()) && gates.get(at).team().getId().equals(before.team().getId())) {
                return Optional.of(at + 1);
            }
        }
        return Optional.empty();
    }

    private void choose(int row, int column) {
        cursor.setSelection(row, column);
        table.deselectAll();
        deeds.chosen();
    }

    private void firstOpen() {
        for (int at = 0; at < gates.size(); at++) {
            if (gates.get(at).isShut()) {
                choose(HEAD_ROWS + gates.get(at).items().indexOf(gates.get(at).open().get(0)), at + 1);
                return;
            }
        }
        choose(1, 1);
    }

    private void columns() {
        while (table.getColumnCount() > gates.size() + 1) {
            table.getColumn(table.getColumnCount() - 1).dispose();
        }
        while (table.getColumnCount() < gates.size() + 1) {
            new TableColumn(table, SWT.LEFT);
        }
        table.getColumn(0).setText(TEXTS.text("gateTable.item"));
        for (int at = 0; at < gates.size(); at++) {
            table.getColumn(at + 1).setText(TEXTS.text("gateTable.team", "number", gates.get(at).team().getNumber()));
        }
    }

    private void rows() {
        List<GateKind> kinds = List.of(GateKind.values());
        while (table.getItemCount() < HEAD_ROWS + kinds.size()) {
            new TableItem(table, SWT.NONE);
        }
        List<String> names = new ArrayList<>(List.of(TEXTS.text("gateTable.day"), TEXTS.text("gateTable.gate")));
        kinds.forEach(kind -> names.add(gates.isEmpty() ? "" : gates.get(0).item(kind).name()));
        for (int row = 0; row < names.size(); row++) {
            table.getItem(row).setText(0, names.get(row));
        }
        for (int at = 0; at < gates.size(); at++) {
            DepartureGate gate = gates.get(at);
            table.getItem(0).setText(at + 1, DateText.inCurrent().day(gate.day()));
            table.getItem(1).setText(at + 1, TEXTS.text("gateTable.state", "open", gate.open().size()));
            table.getItem(1).setImage(at + 1, Icons.image(gate.isShut() ? "blocker" : "accepted"));
            for (GateItem item : gate.items()) {
                TableItem cell = table.getItem(HEAD_ROWS + item.kind().ordinal());
                cell.setText(at + 1, item.stateWord());
                cell.setImage(at + 1, Icons.image(icon(item.state())));
            }
        }
        for (TableColumn column : table.getColumns()) {
            column.pack();
            column.setWidth(column.getWidth() + MARGIN);
        }
    }

    /** Shapes differ, and the word stands beside them. */
    static String icon(GateItem.State state) {
        return switch (state) {
            case SETTLED -> "accepted";
            case OPEN -> "blocker";
            case OVERRIDDEN -> "warning";
        };
    }

    private String spoken() {
        return gate().map(gate -> item().map(item -> TEXTS.text("gateTable.spoken", "team", gate.team().getNumber(), "day", gate.day(),
                "line", item.line())).orElse(gate.sentence())).orElse(TEXTS.text("gateTable.item"));
    }
}
