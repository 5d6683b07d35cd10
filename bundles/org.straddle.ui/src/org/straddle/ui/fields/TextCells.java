package org.straddle.ui.fields;

import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.ICellEditorListener;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TextCellEditor;
import org.straddle.ui.session.Edit;

/** Edits a column in a notation; text that cannot be read is told in the form's head and not taken over. */
final class TextCells<T> extends EditingSupport {

    private final TableViewer viewer;
    private final FieldForm form;
    private final EStructuralFeature feature;
    private final Notation<T> notation;
    private final TextCellEditor editor;

    TextCells(TableViewer viewer, FieldForm form, EStructuralFeature feature, Notation<T> notation) {
        super(viewer);
        this.viewer = viewer;
        this.form = form;
        this.feature = feature;
        this.notation = notation;
        editor = new TextCellEditor(viewer.getTable());
        editor.setValidator(this::complaint);
        editor.addListener(new ICellEditorListener() {
            @Override
            public void applyEditorValue() {
                tell(null);
            }

            @Override
            public void cancelEditor() {
                tell(null);
            }

            @Override
            public void editorValueChanged(boolean wasValid, boolean isValid) {
                tell(isValid ? null : editor.getErrorMessage());
            }
        });
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        return editor;
    }

    @Override
    protected boolean canEdit(Object row) {
        return true;
    }

    @Override
    protected Object getValue(Object row) {
        return notation.print(value(row));
    }

    @Override
    protected void setValue(Object row, Object typed) {
        if (typed == null || complaint(typed) != null || typed.equals(getValue(row))) {
            return;
        }
        T parsed = notation.parse((String) typed);
        Object present = ((EObject) row).eGet(feature);
        if (!Objects.equals(parsed, present instanceof List<?> list ? List.copyOf(list) : present)) {
            form.session().execute(Edit.set(form.session().editingDomain(), (EObject) row, feature, parsed));
        }
        viewer.refresh(row);
    }

    private String complaint(Object typed) {
        try {
            notation.parse((String) typed);
            return null;
        } catch (IllegalArgumentException refused) {
            return refused.getMessage();
        }
    }

    private void tell(String complaint) {
        if (complaint == null) {
            form.managedForm().getMessageManager().removeMessage(this);
        } else {
            form.managedForm().getMessageManager().addMessage(this, complaint, null, IMessageProvider.ERROR);
        }
    }

    @SuppressWarnings("unchecked")
    private T value(Object row) {
        return (T) ((EObject) row).eGet(feature);
    }
}
