package org.straddle.ui.fields;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.FocusCellOwnerDrawHighlighter;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.HeaderRoom;
import org.straddle.ui.parts.KeptRows;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.WheelPasses;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.UiThread;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/**
 * A list of the event as a table that is edited in place. Insert adds a row, Delete removes the chosen ones, Tab goes
 * to the next cell; every change of a cell is one command.
 */
public final class TableField<E extends EObject> implements Field {

    private static final Catalogue TEXTS = Catalogue.of(TableField.class);

    private final EventSession session;
    private final FieldForm form;
    private final Supplier<? extends EObject> owner;
    private final EReference list;
    private final Supplier<E> fresh;
    private final TableViewer viewer;
    private UnaryOperator<List<E>> order = rows -> rows;
    private Button remove;

    TableField(FieldForm form, Composite section, Supplier<? extends EObject> owner, EReference list,
            Supplier<E> fresh, int rows) {
        this.form = form;
        this.session = form.session();
        this.owner = owner;
        this.list = list;
        this.fresh = fresh;
        FormToolkit toolkit = form.managedForm().getToolkit();
        Table table = toolkit.createTable(section, SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        OnceSized.show(table);
        WheelPasses.on(table, form.managedForm().getForm());
        GridData place = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
        place.heightHint = (rows + 1) * FieldForm.rowHeight(table);
        place.widthHint = 200;
        table.setLayoutData(place);
        viewer = new TableViewer(table);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        editWithKeys();
        buttons(section, toolkit);
        table.addKeyListener(KeyListener.keyPressedAdapter(key -> {
            if (key.keyCode == SWT.DEL) {
                remove();
            } else if (key.keyCode == SWT.INSERT) {
                add();
            }
        }));
    }

    /** A column that only tells. */
    public TableField<E> column(String title, int width, Function<E, String> text) {
        newColumn(title, width, text, row -> null);
        return this;
    }

    /** A column with a picture before its text. */
    public TableField<E> column(String title, int width, Function<E, String> text, Function<E, Image> image) {
        newColumn(title, width, text, image);
        return this;
    }

    /** A column that is edited as text. */
    public <T> TableField<E> column(String title, int width, EStructuralFeature feature, Notation<T> notation) {
        TableViewerColumn column = newColumn(title, width, row -> notation.print(value(row, feature)), row -> null);
        column.setEditingSupport(new TextCells<>(viewer, form, feature, notation));
        if (feature.getEType().getInstanceClass() == double.class
                || feature.getEType().getInstanceClass() == int.class) {
            column.getColumn().setAlignment(SWT.RIGHT);
        }
        return this;
    }

    /** A column with one of the values of an enumeration. */
    public <T extends Enumerator> TableField<E> choice(String title, int width, EStructuralFeature feature,
            List<T> values) {
        return options(title, width, feature, () -> values, Naming::of);
    }

    /** A column with one of several values or things. */
    public <T> TableField<E> options(String title, int width, EStructuralFeature feature, Supplier<List<T>> values,
            Function<T, String> words) {
        return optionsOf(title, width, feature, row -> values.get(), words);
    }

    /** A column with one of several values or things, which depend on the row. */
    @SuppressWarnings("unchecked")
    public <T> TableField<E> optionsOf(String title, int width, EStructuralFeature feature, Function<E, List<T>> values,
            Function<T, String> words) {
        TableViewerColumn column = newColumn(title, width, row -> words.apply(value(row, feature)), row -> null);
        column.setEditingSupport(new ChoiceCells<>(viewer, session, feature, row -> values.apply((E) row), words));
        return this;
    }

    /** A column that says yes or nothing; a click changes it. */
    public TableField<E> check(String title, int width, EStructuralFeature feature) {
        TableViewerColumn column = newColumn(title, width,
                row -> Boolean.TRUE.equals(value(row, feature)) ? TEXTS.text("tableField.yes") : "–", row -> null);
        column.setEditingSupport(new CheckCells(viewer, session, feature));
        return this;
    }

    @Override
    public void refresh() {
        if (!viewer.isCellEditorActive()) {
            KeptRows.show(viewer, rows());
            remove.setEnabled(!form.locked() && !viewer.getStructuredSelection().isEmpty());
        }
    }

    /** Shows the rows in another order than the list has them; they are then not moved by hand. */
    public TableField<E> ordered(UnaryOperator<List<E>> by) {
        order = by;
        return this;
    }

    @Override
    public void focus() {
        viewer.getControl().setFocus();
    }

    /** Selects the row of a thing, for somebody who was led here. */
    public void select(Identified thing) {
        viewer.setSelection(new StructuredSelection(thing), true);
    }

    public TableViewer viewer() {
        return viewer;
    }

    @SuppressWarnings("unchecked")
    private List<E> rows() {
        return owner.get() == null ? List.of() : order.apply((List<E>) owner.get().eGet(list));
    }

    private TableViewerColumn newColumn(String title, int width, Function<E, String> text, Function<E, Image> image) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        column.getColumn().setToolTipText(title);
        column.getColumn().setWidth(HeaderRoom.least(viewer.getTable(), title, width));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            @SuppressWarnings("unchecked")
            public String getText(Object row) {
                return text.apply((E) row);
            }

            @Override
            @SuppressWarnings("unchecked")
            public Image getImage(Object row) {
                return image.apply((E) row);
            }
        });
        return column;
    }

    private void add() {
        if (owner.get() == null || fresh == null || form.locked()) {
            return;
        }
        E row = fresh.get();
        if (session.execute(Edit.add(session.editingDomain(), owner.get(), list, row))) {
            viewer.setSelection(new StructuredSelection(row), true);
            // The table scrolls only once it has been laid out with the new row.
            UiThread.later(viewer.getTable(), () -> edit(row));
        }
    }

    /** Opens the first cell of a row that can be edited. */
    private void edit(E row) {
        Table table = viewer.getTable();
        if (table.isDisposed()) {
            return;
        }
        table.showSelection();
        for (int column = 0; column < table.getColumnCount() && !viewer.isCellEditorActive(); column++) {
            viewer.editElement(row, column);
        }
    }

    private String what() {
        return Naming.inCurrent().type(list.getEReferenceType());
    }

    private void remove() {
        List<?> chosen = viewer.getStructuredSelection().toList();
        if (!chosen.isEmpty() && !form.locked()) {
            @SuppressWarnings("unchecked")
            List<EObject> things = (List<EObject>) chosen;
            session.execute(Edit.delete(session.editingDomain(), session.event(), things,
                    things.size() == 1 ? what() : TEXTS.text("tableField.rows", "count", things.size())));
        }
    }

    private void move(int by) {
        Object chosen = viewer.getStructuredSelection().getFirstElement();
        int to = rows().indexOf(chosen) + by;
        if (chosen != null && to >= 0 && to < rows().size()) {
            session.execute(Edit.move(session.editingDomain(), owner.get(), list, (EObject) chosen, to));
        }
    }

    private void buttons(Composite section, FormToolkit toolkit) {
        Composite column = toolkit.createComposite(section);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        column.setLayout(layout);
        column.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
        if (fresh != null) {
            button(column, toolkit, "add", TEXTS.text("tableField.add", "what", what()), this::add);
        }
        remove = button(column, toolkit, "remove", TEXTS.text("tableField.remove"), this::remove);
        if (fresh != null) {
            button(column, toolkit, "up", TEXTS.text("tableField.up"), () -> move(-1));
            button(column, toolkit, "down", TEXTS.text("tableField.down"), () -> move(1));
        }
        viewer.addSelectionChangedListener(change -> remove.setEnabled(!form.locked() && !change.getSelection().isEmpty()));
        remove.setEnabled(false);
    }

    private static Button button(Composite parent, FormToolkit toolkit, String icon, String tip, Runnable action) {
        Button button = toolkit.createButton(parent, "", SWT.PUSH | SWT.FLAT);
        button.setImage(Icons.image(icon));
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, click -> action.run());
        return button;
    }

    private void editWithKeys() {
        TableViewerFocusCellManager focus =
                new TableViewerFocusCellManager(viewer, new FocusCellOwnerDrawHighlighter(viewer));
        ColumnViewerEditorActivationStrategy starts = new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                if (form.locked()) {
                    return false;
                }
                return event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                        || event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                        || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC
                        || event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                                && (event.keyCode == SWT.CR || event.keyCode == SWT.F2);
            }
        };
        TableViewerEditor.create(viewer, focus, starts, ColumnViewerEditor.TABBING_HORIZONTAL
                | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR | ColumnViewerEditor.KEYBOARD_ACTIVATION);
    }

    @SuppressWarnings("unchecked")
    private static <T> T value(EObject row, EStructuralFeature feature) {
        Object value = row.eGet(feature);
        return (T) value;
    }
}
