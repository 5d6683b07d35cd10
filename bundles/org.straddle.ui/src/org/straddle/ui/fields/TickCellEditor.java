package org.straddle.ui.fields;

import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * A box to tick in a cell. Tab goes through it, the space key ticks; a double click or Return on the closed cell opens
 * it with the tick changed.
 */
final class TickCellEditor extends CellEditor {

    private Button box;

    TickCellEditor(Composite parent) {
        super(parent);
    }

    @Override
    protected Control createControl(Composite parent) {
        box = new Button(parent, SWT.CHECK);
        box.addSelectionListener(SelectionListener.widgetSelectedAdapter(tick -> changed()));
        box.addKeyListener(KeyListener.keyPressedAdapter(this::keyReleaseOccured));
        return box;
    }

    private void changed() {
        markDirty();
        valueChanged(true, true);
    }

    @Override
    public void activate(ColumnViewerEditorActivationEvent event) {
        super.activate(event);
        if (event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                || event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION) {
            box.setSelection(!box.getSelection());
            changed();
        }
    }

    @Override
    protected Object doGetValue() {
        return box.getSelection();
    }

    @Override
    protected void doSetFocus() {
        box.setFocus();
    }

    @Override
    protected void doSetValue(Object ticked) {
        box.setSelection(Boolean.TRUE.equals(ticked));
    }
}
