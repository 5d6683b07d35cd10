package org.straddle.ui.editors;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;

/** Tells other views which thing an editor is about. */
record FixedSelection(ISelection selection) implements ISelectionProvider {

    @Override
    public ISelection getSelection() {
        return selection;
    }

    @Override
    public void setSelection(ISelection ignored) {
        // An editor stays with its thing.
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        // It never changes.
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        // It never changes.
    }
}
