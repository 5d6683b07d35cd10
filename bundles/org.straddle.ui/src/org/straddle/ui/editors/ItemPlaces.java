package org.straddle.ui.editors;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.ViewerDropAdapter;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.dnd.TransferData;
import org.eclipse.swt.widgets.Composite;
import org.straddle.kit.Moving;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.naming.Naming;
import org.straddle.ui.fields.Field;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/**
 * The bags of a kit and the other kits, one a line: items that are dropped on a line go there, and so do the chosen ones when
 * Enter is pressed on it.
 */
final class ItemPlaces implements Field {

    private static final Catalogue TEXTS = Catalogue.of(ItemPlaces.class);

    private final FieldForm form;
    private final EventSession session;
    private final Kit kit;
    private TableViewer items;
    private final Composite frame;
    private final TableViewer places;

    /** The last line: a bag that has no name yet. */
    private static final Object NEW_BAG = new Object();

    ItemPlaces(FieldForm form, Composite parent, Kit kit) {
        this.form = form;
        this.session = form.session();
        this.kit = kit;
        frame = form.managedForm().getToolkit().createComposite(parent);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        places = new TableViewer(form.managedForm().getToolkit().createTable(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL));
        places.setContentProvider(ArrayContentProvider.getInstance());
        TableViewerColumn column = new TableViewerColumn(places, SWT.NONE);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(100, 300));
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(this::words));
        places.getTable().getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(
                asked -> asked.result = TEXTS.text("itemPlaces.name")));
        places.addOpenListener(opening -> move(chosen(), ((IStructuredSelection) opening.getSelection()).getFirstElement()));
        refresh();
    }

    /** @param table of the kit's items: what is chosen in it can be moved from now on */
    void take(TableViewer table) {
        items = table;
        Transfer[] rows = {LocalSelectionTransfer.getTransfer()};
        items.addDragSupport(DND.DROP_MOVE, rows, new DragSourceAdapter() {
            @Override
            public void dragStart(DragSourceEvent event) {
                event.doit = !form.locked() && !items.getStructuredSelection().isEmpty() && !items.isCellEditorActive();
                LocalSelectionTransfer.getTransfer().setSelection(items.getSelection());
            }
        });
        places.addDropSupport(DND.DROP_MOVE, rows, new Landing(places));
        items.addDropSupport(DND.DROP_MOVE, rows, new Landing(items));
    }

    /** On a line of the places, or anywhere on the items of another kit's form. */
    private final class Landing extends ViewerDropAdapter {

        private final TableViewer on;

        Landing(TableViewer on) {
            super(on);
            this.on = on;
            setFeedbackEnabled(false);
        }

        @Override
        public boolean validateDrop(Object target, int operation, TransferData type) {
            return !form.locked() && LocalSelectionTransfer.getTransfer().isSupportedType(type) && (on == items || target != null);
        }

        @Override
        public boolean performDrop(Object data) {
            List<KitItem> dropped = kitItems((IStructuredSelection) LocalSelectionTransfer.getTransfer().getSelection());
            move(dropped, on == items ? new Moving(kit, Optional.empty()) : getCurrentTarget());
            return true;
        }
    }

    Composite control() {
        return frame;
    }

    @Override
    public void refresh() {
        List<Object> lines = new java.util.ArrayList<>(Moving.placesFrom(kit));
        lines.add(NEW_BAG);
        Object chosen = places.getStructuredSelection().getFirstElement();
        places.setInput(lines);
        if (chosen != null && lines.contains(chosen)) {
            places.setSelection(new org.eclipse.jface.viewers.StructuredSelection(chosen));
        }
    }

    private String words(Object line) {
        if (!(line instanceof Moving place)) {
            return TEXTS.text("itemPlaces.newBag");
        }
        List<KitItem> content = place.content();
        String where = place.kit() != kit ? "kit" : place.bag().orElse("").isEmpty() ? "none" : "bag";
        return TEXTS.text("itemPlaces.place", "where", where, "bag", place.bag().orElse(""), "kit", Naming.name(place.kit()),
                "items", content.size(), "kg", content.stream().mapToDouble(item -> item.getCount() * item.getWeightKg()).sum());
    }

    private List<KitItem> chosen() {
        return kitItems(items.getStructuredSelection());
    }

    private static List<KitItem> kitItems(IStructuredSelection selection) {
        return selection == null ? List.of() : ((List<?>) selection.toList()).stream().filter(KitItem.class::isInstance)
                .map(KitItem.class::cast).filter(item -> item.eContainer() instanceof Kit).toList();
    }

    private void move(List<KitItem> moved, Object line) {
        Optional<Moving> place = line instanceof Moving known ? Optional.of(known) : line == NEW_BAG ? newBag() : Optional.empty();
        place.filter(to -> !form.locked() && !to.moved(moved).isEmpty()).ifPresent(to -> session.execute(to.command(
                session.editingDomain(), TEXTS.text("itemPlaces.move", "count", to.moved(moved).size()), moved)));
    }

    private Optional<Moving> newBag() {
        InputDialog dialog = new InputDialog(frame.getShell(), TEXTS.text("itemPlaces.newBag.title"), TEXTS.text("itemPlaces.newBag.ask"), "",
                text -> text.isBlank() ? TEXTS.text("itemPlaces.newBag.required") : null);
        return dialog.open() == Window.OK ? Optional.of(new Moving(kit, Optional.of(dialog.getValue().strip()))) : Optional.empty();
    }
}
