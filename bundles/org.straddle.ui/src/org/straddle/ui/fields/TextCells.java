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
import org.eclipse.jface.window.DefaultToolTip;
import org.eclipse.jface.window.ToolTip;
import org.eclipse.swt.events.SelectionEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.Edit;
import org.straddle.words.Catalogue;

/**
 * Edits a column in a notation. Text that cannot be read is told of beside the cell and in the form's head; Enter does not
 * take it, and when the cell is left without it the head says so until the next edit.
 */
final class TextCells<T> extends EditingSupport {

    private static final Catalogue TEXTS = Catalogue.of(TextCells.class);

    private final TableViewer viewer;
    private final FieldForm form;
    private final EStructuralFeature feature;
    private final Notation<T> notation;
    private final TextCellEditor editor;
    private final DefaultToolTip beside;

    TextCells(TableViewer viewer, FieldForm form, EStructuralFeature feature, Notation<T> notation) {
        super(viewer);
        this.viewer = viewer;
        this.form = form;
        this.feature = feature;
        this.notation = notation;
        editor = new ReadableTextEditor(viewer.getTable());
        editor.setValidator(this::complaint);
        beside = new DefaultToolTip(editor.getControl(), ToolTip.NO_RECREATE, true);
        beside.setHideOnMouseDown(false);
        editor.addListener(new ICellEditorListener() {
            @Override
            public void applyEditorValue() {
                leave();
            }

            @Override
            public void cancelEditor() {
                form.session().settle(editor);
                beside.hide();
                tell(null);
            }

            @Override
            public void editorValueChanged(boolean wasValid, boolean isValid) {
                form.session().typing(editor, TEXTS.text("textCells.standing", "field", Naming.feature(feature),
                        "text", ((Text) editor.getControl()).getText()));
                tell(isValid ? null : editor.getErrorMessage());
                beside.hide();
                if (!isValid) {
                    beside.setText(editor.getErrorMessage());
                    beside.show(new Point(0, editor.getControl().getSize().y));
                }
            }
        });
    }

    /** However the cell is left; what it held and cannot be read is told of until another cell is edited. */
    private void leave() {
        form.session().settle(editor);
        beside.hide();
        tell(editor.isValueValid() ? null : TEXTS.text("textCells.refused",
                "text", ((Text) editor.getControl()).getText(), "problem", editor.getErrorMessage()));
    }

    /** Stays open while what it holds cannot be read. */
    private final class ReadableTextEditor extends TextCellEditor {

        ReadableTextEditor(Composite parent) {
            super(parent);
        }

        @Override
        protected void handleDefaultSelection(SelectionEvent enter) {
            if (isValueValid()) {
                super.handleDefaultSelection(enter);
            }
        }

        @Override
        public void deactivate() {
            if (beside != null) {
                beside.hide();
            }
            super.deactivate();
        }
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        tell(null);
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
        if (typed == null) {
            leave();
        }
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
            form.managedForm().getMessageManager().removeMessage(viewer);
        } else {
            form.managedForm().getMessageManager().addMessage(viewer, complaint, null, IMessageProvider.ERROR);
        }
    }

    @SuppressWarnings("unchecked")
    private T value(Object row) {
        return (T) ((EObject) row).eGet(feature);
    }
}
