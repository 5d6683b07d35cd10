package org.straddle.ui.fields;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;

/** Edits a yes-or-no column. */
final class CheckCells extends EditingSupport {

    private final EventSession session;
    private final EStructuralFeature feature;
    private final TickCellEditor editor;

    CheckCells(TableViewer viewer, EventSession session, EStructuralFeature feature) {
        super(viewer);
        this.session = session;
        this.feature = feature;
        editor = new TickCellEditor(viewer.getTable());
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
        return ((EObject) row).eGet(feature);
    }

    @Override
    protected void setValue(Object row, Object ticked) {
        if (ticked.equals(getValue(row))) {
            return;
        }
        session.execute(Edit.set(session.editingDomain(), (EObject) row, feature, ticked));
        getViewer().refresh();
    }
}
