package org.straddle.ui.sky;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.sky.pass.SheetWords.MomentRow;
import org.straddle.words.Catalogue;

/** What holds at AOS, TCA and LOS. */
final class MomentTable {

    private static final Catalogue TEXTS = Catalogue.of(MomentTable.class);

    private final Table table;

    MomentTable(Composite parent) {
        table = new Table(parent, SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        table.setLinesVisible(true);
        for (String title : List.of("", "AOS", "TCA", "LOS")) {
            new TableColumn(table, title.isEmpty() ? SWT.LEFT : SWT.RIGHT).setText(title);
        }
        table.addListener(SWT.Resize, event -> fit());
        Accessibility.name(table, TEXTS.text("momentTable.aosTcaLos"));
    }

    void show(List<MomentRow> rows) {
        table.setRedraw(false);
        table.setItemCount(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            TableItem item = table.getItem(i);
            item.setText(0, rows.get(i).heading());
            for (int column = 1; column <= 3; column++) {
                item.setText(column, rows.get(i).cells().get(column - 1));
            }
        }
        fit();
        table.setRedraw(true);
    }

    /** Columns as wide as what is in them; the headings take what is left. */
    private void fit() {
        int left = table.getClientArea().width;
        for (TableColumn column : table.getColumns()) {
            column.pack();
            left -= column.getWidth();
        }
        if (left > 0) {
            table.getColumn(0).setWidth(table.getColumn(0).getWidth() + left);
        }
    }
}
