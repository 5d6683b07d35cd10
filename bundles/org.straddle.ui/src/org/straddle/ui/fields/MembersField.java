package org.straddle.ui.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Image;
import org.straddle.outlook.Outlook;
import org.straddle.ui.parts.KeptRows;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.Kind;
import org.straddle.ui.things.ThingLine;

/** Several things out of those that the event has, ticked in a list. */
final class MembersField<T extends EObject> implements Field {

    private final CheckboxTableViewer viewer;
    private final Slot<List<T>> slot;
    private final Supplier<List<T>> options;

    MembersField(EventSession session, CheckboxTableViewer viewer, Slot<List<T>> slot, Supplier<List<T>> options) {
        this.viewer = viewer;
        this.slot = slot;
        this.options = options;
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                String detail = ThingLine.detail((EObject) element, Outlook.zoneOf(session.event()));
                return ThingLine.name((EObject) element) + (detail.isEmpty() ? "" : "  " + detail);
            }

            @Override
            public Image getImage(Object element) {
                return Icons.image(Kind.icon((EObject) element));
            }
        });
        refresh();
        viewer.addCheckStateListener(change -> {
            List<T> members = new ArrayList<>(slot.get().get());
            @SuppressWarnings("unchecked")
            T changed = (T) change.getElement();
            if (change.getChecked()) {
                members.add(changed);
            } else {
                members.remove(changed);
            }
            session.execute(slot.set().apply(members));
        });
    }

    @Override
    public void focus() {
        viewer.getControl().setFocus();
    }

    @Override
    public void refresh() {
        // Rows that were made anew under the mouse would lose the tick that is being set.
        if (!List.of(viewer.getCheckedElements()).equals(slot.get().get()) | KeptRows.show(viewer, options.get())) {
            viewer.setCheckedElements(slot.get().get().toArray());
        }
    }
}
