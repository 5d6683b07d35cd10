package org.straddle.ui.fields;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ComboBoxViewerCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;

/** Edits a column by choosing from a drop-down list. */
final class ChoiceCells<T> extends EditingSupport {

    /** Stands for "no value", which a list viewer cannot hold. */
    private static final Object NONE = new Object();

    private final EventSession session;
    private final EStructuralFeature feature;
    private final Function<Object, List<T>> values;
    private final ComboBoxViewerCellEditor editor;

    /** @param values what may be chosen in a row */
    @SuppressWarnings("unchecked")
    ChoiceCells(TableViewer viewer, EventSession session, EStructuralFeature feature, Function<Object, List<T>> values,
            Function<T, String> words) {
        super(viewer);
        this.session = session;
        this.feature = feature;
        this.values = values;
        editor = new ComboBoxViewerCellEditor(viewer.getTable(), SWT.READ_ONLY);
        editor.setContentProvider(ArrayContentProvider.getInstance());
        editor.setLabelProvider(new LabelProvider() {
            @Override
            public String getText(Object value) {
                return words.apply(value == NONE ? null : (T) value);
            }
        });
        editor.setActivationStyle(ComboBoxViewerCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION);
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        editor.setInput(values.apply(row).stream().map(value -> value == null ? NONE : value).toArray());
        return editor;
    }

    @Override
    protected boolean canEdit(Object row) {
        return true;
    }

    @Override
    protected Object getValue(Object row) {
        Object value = ((EObject) row).eGet(feature);
        return value == null ? NONE : value;
    }

    @Override
    protected void setValue(Object row, Object chosen) {
        Object value = chosen == NONE ? null : chosen;
        if (chosen != null && !Objects.equals(value, ((EObject) row).eGet(feature))) {
            session.execute(Edit.set(session.editingDomain(), (EObject) row, feature, value));
        }
        getViewer().refresh();
    }
}
