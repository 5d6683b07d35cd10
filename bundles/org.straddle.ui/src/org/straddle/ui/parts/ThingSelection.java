package org.straddle.ui.parts;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.straddle.model.Identified;

/** What is selected on a drawing of the event, as live objects of the model, for the other views. */
public final class ThingSelection implements ISelectionProvider {

    private final ListenerList<ISelectionChangedListener> listeners = new ListenerList<>();
    private ISelection selection = StructuredSelection.EMPTY;

    public void select(Identified thing) {
        setSelection(new StructuredSelection(thing));
    }

    public void clear() {
        setSelection(StructuredSelection.EMPTY);
    }

    @Override
    public ISelection getSelection() {
        return selection;
    }

    @Override
    public void setSelection(ISelection chosen) {
        selection = chosen;
        listeners.forEach(listener -> listener.selectionChanged(new SelectionChangedEvent(this, chosen)));
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.add(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
