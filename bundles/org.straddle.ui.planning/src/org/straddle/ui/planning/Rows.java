package org.straddle.ui.planning;

import java.util.function.Function;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.straddle.ui.parts.HeaderRoom;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TableFrame;

/** A table of one kind of row, each column a function of it; long texts are told in full where the mouse rests. */
final class Rows<T> {

    private final TableViewer viewer;
    private final TableColumnLayout layout = new TableColumnLayout();

    Rows(Composite parent, int style) {
        Composite frame = new TableFrame(parent);
        frame.setLayout(layout);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | style);
        viewer.getTable().setHeaderVisible(true);
        OnceSized.show(viewer.getTable());
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
    }

    Rows<T> column(String title, int weight, int least, Function<T, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, HeaderRoom.least(viewer.getTable(), title, least)));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            @SuppressWarnings("unchecked")
            public String getText(Object row) {
                return text.apply((T) row);
            }

            @Override
            public String getToolTipText(Object row) {
                String words = getText(row);
                return words.length() > 30 ? words : null;
            }
        });
        return this;
    }

    TableViewer viewer() {
        return viewer;
    }

    Composite frame() {
        return viewer.getTable().getParent();
    }
}
