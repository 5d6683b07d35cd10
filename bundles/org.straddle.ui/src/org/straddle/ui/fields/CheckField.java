package org.straddle.ui.fields;

import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.straddle.ui.session.EventSession;

/** Yes or no. */
final class CheckField implements Field {

    private final Button button;
    private final Slot<Boolean> slot;

    CheckField(EventSession session, Button button, Slot<Boolean> slot) {
        this.button = button;
        this.slot = slot;
        refresh();
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                click -> session.execute(slot.set().apply(button.getSelection()))));
    }

    @Override
    public void focus() {
        button.setFocus();
    }

    @Override
    public void refresh() {
        button.setSelection(Boolean.TRUE.equals(slot.get().get()));
    }
}
