package org.straddle.ui.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.Section;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.parts.WheelPasses;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.UiThread;
import org.straddle.words.Catalogue;

/**
 * A form of titled sections with fields in three columns: name, control, unit. Editors say what the fields are; how
 * they look, validate, commit and follow the event is decided here once.
 */
public final class FieldForm {

    private static final Catalogue TEXTS = Catalogue.of(FieldForm.class);

    private static final int FIELD_WIDTH = 170;
    private static final int NUMBER_WIDTH = 84;
    private static final int NAME_WIDTH = 124;
    /** Set on buttons that a lock leaves alone. */
    private static final String LOOKS = "looks";

    private final EventSession session;
    private final IManagedForm form;
    private final List<Field> fields = new ArrayList<>();
    private Composite section;
    private boolean locked;
    private Runnable typed = () -> { };
    private int rowStart;

    public FieldForm(EventSession session, IManagedForm form) {
        this.session = session;
        this.form = form;
        form.getToolkit().setBorderStyle(SWT.BORDER);
        GridLayout columns = new GridLayout(2, true);
        columns.marginWidth = 12;
        columns.marginHeight = 10;
        columns.horizontalSpacing = 24;
        columns.verticalSpacing = 14;
        form.getForm().getBody().setLayout(columns);
    }

    public EventSession session() {
        return session;
    }

    public IManagedForm managedForm() {
        return form;
    }

    /** Starts a section; fields that follow go into it. */
    public FieldForm section(String title, String description) {
        return section(title, description, 1, 1);
    }

    /** A section over the whole width, for tables. */
    public FieldForm wide(String title, String description) {
        return section(title, description, 2, 1);
    }

    /** A section that stands beside several others. */
    public FieldForm tall(String title, String description, int rows) {
        return section(title, description, 1, rows);
    }

    private FieldForm section(String title, String description, int columns, int rows) {
        FormToolkit toolkit = form.getToolkit();
        int style = description.isEmpty() ? 0 : Section.DESCRIPTION;
        Section frame = toolkit.createSection(form.getForm().getBody(), style);
        frame.setText(title);
        // A title bar would be painted as a picture as large as the whole section, at each paint.
        Composite line = new Composite(frame, SWT.NONE);
        line.setBackground(frame.getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        frame.setSeparatorControl(line);
        if (!description.isEmpty()) {
            frame.setDescription(description);
        }
        GridData place = new GridData(SWT.FILL, SWT.TOP, true, false, columns, rows);
        place.widthHint = columns == 1 ? 340 : 700;
        frame.setLayoutData(place);
        section = toolkit.createComposite(frame);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 2;
        layout.marginHeight = 6;
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 6;
        section.setLayout(layout);
        frame.setClient(section);
        return this;
    }

    /** One line of text in a notation. */
    public <T> TextField<T> text(String name, String unit, Notation<T> notation, Slot<T> slot) {
        label(name, SWT.CENTER);
        Text box = form.getToolkit().createText(section, "", SWT.SINGLE);
        place(box, unit, SWT.DEFAULT);
        TextField<T> field = new TextField<>(session, form.getMessageManager(), box, told(notation), notation, slot).named(name);
        box.addModifyListener(change -> UiThread.later(box, () -> {
            if (!box.isDisposed()) {
                typed.run();
            }
        }));
        return track(field);
    }

    public <T> TextField<T> text(String name, String unit, Notation<T> notation, EObject owner,
            EStructuralFeature feature) {
        return text(name, unit, notation, Slot.of(session, owner, feature));
    }

    /** Several lines of plain text. */
    public TextField<String> lines(String name, int lines, EObject owner, EStructuralFeature feature) {
        label(name, SWT.TOP);
        Text box = form.getToolkit().createText(section, "", SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        TabLeaves.on(box);
        WheelPasses.on(box, form.getForm());
        place(box, "", lines * box.getLineHeight());
        return track(new TextField<>(session, form.getMessageManager(), box, null, Words.any(),
                Slot.of(session, owner, feature)));
    }

    public void check(String name, EObject owner, EStructuralFeature feature) {
        check(name, Slot.of(session, owner, feature));
    }

    /** One of the values of an enumeration of the model. */
    public <E extends Enumerator> ChoiceField<E> choice(String name, List<E> values, EObject owner,
            EStructuralFeature feature) {
        return choice(name, values, Slot.of(session, owner, feature));
    }

    public <E extends Enumerator> ChoiceField<E> choice(String name, List<E> values, Slot<E> slot) {
        label(name, SWT.CENTER);
        return choice(slot, () -> values, Naming::of);
    }

    /** Another thing of the event; its name leads there. */
    public <E extends Identified> ChoiceField<E> reference(String name, Supplier<? extends List<E>> things,
            EObject owner, EReference feature) {
        Slot<E> slot = Slot.of(session, owner, feature);
        Hyperlink link = form.getToolkit().createHyperlink(section, name, SWT.NONE);
        name(link, SWT.CENTER);
        link.setToolTipText(TEXTS.text("fieldForm.link.tooltip", "name", name));
        link.addHyperlinkListener(new HyperlinkAdapter() {
            @Override
            public void linkActivated(HyperlinkEvent click) {
                if (slot.get().get() != null) {
                    session.reveal(slot.get().get());
                }
            }
        });
        return choice(slot, () -> Stream.concat(Stream.of((E) null), things.get().stream()).toList(),
                thing -> thing == null ? TEXTS.text("fieldForm.none") : Naming.name(thing));
    }

    private <T> ChoiceField<T> choice(Slot<T> slot, Supplier<List<T>> options, Function<T, String> words) {
        Combo combo = new Combo(section, SWT.READ_ONLY | SWT.DROP_DOWN);
        WheelPasses.on(combo, form.getForm());
        form.getToolkit().adapt(combo, true, true);
        place(combo, "", SWT.DEFAULT);
        return track(new ChoiceField<>(session, combo, slot, options, words));
    }

    public void check(String name, Slot<Boolean> slot) {
        label("", SWT.CENTER);
        Button button = form.getToolkit().createButton(section, name, SWT.CHECK);
        GridData place = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        place.horizontalIndent = 4;
        button.setLayoutData(place);
        track(new CheckField(session, button, slot));
    }

    /** Several other things of the event, ticked in a list. */
    public <E extends EObject> void members(String name, Supplier<List<E>> things, EObject owner,
            EReference feature) {
        label(name, SWT.TOP);
        Table table = form.getToolkit().createTable(section, SWT.CHECK | SWT.V_SCROLL | SWT.FULL_SELECTION);
        WheelPasses.on(table, form.getForm());
        int rows = Math.max(3, Math.min(7, things.get().size()));
        place(table, "", rows * rowHeight(table));
        track(new MembersField<>(session, new CheckboxTableViewer(table), Slot.of(session, owner, feature), things));
    }

    /** A line of text that is worked out, not entered. */
    public void told(String name, Supplier<String> words) {
        label(name, SWT.TOP);
        Label line = form.getToolkit().createLabel(section, words.get(), SWT.WRAP);
        GridData place = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
        place.widthHint = FIELD_WIDTH;
        place.horizontalIndent = 6;
        place.verticalIndent = 4;
        line.setLayoutData(place);
        track(() -> {
            if (!line.getText().equals(words.get())) {
                line.setText(words.get());
                line.requestLayout();
            }
        });
    }

    /** A table over the list that a feature holds, with the buttons to change it. */
    public <E extends EObject> TableField<E> table(EObject owner, EReference list, Supplier<E> fresh,
            int rows) {
        return table(() -> owner, list, fresh, rows);
    }

    /** A table whose rows come from elsewhere and can only be removed. */
    public <E extends EObject> TableField<E> table(EObject owner, EReference list, int rows) {
        return table(() -> owner, list, null, rows);
    }

    /** The same over an object that changes with what is chosen elsewhere; null shows no rows. */
    public <E extends EObject> TableField<E> table(Supplier<? extends EObject> owner, EReference list,
            Supplier<E> fresh, int rows) {
        return track(new TableField<>(this, section, owner, list, fresh, rows));
    }

    /** A control of the editor's own over the whole width of the section; it is refreshed with the fields. */
    public <C extends Control> C own(Function<Composite, C> control, Field refresh, int height) {
        C made = control.apply(section);
        GridData place = new GridData(SWT.FILL, SWT.FILL, true, false, 3, 1);
        place.heightHint = height;
        place.widthHint = FIELD_WIDTH;
        made.setLayoutData(place);
        track(refresh);
        return made;
    }

    public Button button(String name, String explanation, Runnable action) {
        label("", SWT.CENTER);
        Button button = form.getToolkit().createButton(section, name, SWT.PUSH);
        button.setToolTipText(explanation);
        button.setForeground(null);
        GridData place = new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 2, 1);
        place.horizontalIndent = 6;
        button.setLayoutData(place);
        button.addListener(SWT.Selection, click -> action.run());
        return button;
    }

    /** Several buttons beside each other, in their order. */
    public List<Button> buttons(Deed... deeds) {
        label("", SWT.CENTER);
        Composite row = form.getToolkit().createComposite(section);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 6;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 8;
        row.setLayout(layout);
        GridData place = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        place.widthHint = FIELD_WIDTH;
        row.setLayoutData(place);
        List<Button> made = new ArrayList<>();
        for (Deed deed : deeds) {
            Button button = form.getToolkit().createButton(row, deed.name(), SWT.PUSH);
            button.setToolTipText(deed.explanation());
            button.setForeground(null);
            button.setData(LOOKS, deed.looks());
            button.addListener(SWT.Selection, click -> deed.action().run());
            made.add(button);
        }
        return made;
    }

    /** Whether what the form shows may only be looked at. */
    public boolean locked() {
        return locked;
    }

    /** Locks all fields, or opens them again. */
    public void lock(boolean lock) {
        locked = lock;
        lock(form.getForm().getBody());
        if (!lock) {
            refresh();
        }
    }

    private void lock(Control control) {
        if (control instanceof Text text) {
            text.setEditable(!locked);
        } else if (control instanceof Combo || control instanceof Button && control.getData(LOOKS) != Boolean.TRUE) {
            control.setEnabled(!locked);
        } else if (control instanceof Composite composite && !(control instanceof Table)) {
            for (Control child : composite.getChildren()) {
                lock(child);
            }
        }
    }

    public <F extends Field> F track(F field) {
        fields.add(field);
        return field;
    }

    public void refresh() {
        fields.forEach(Field::refresh);
    }

    /** What stands in the fields and cannot be read, one entry a field. */
    public List<String> unread() {
        return fields.stream().flatMap(field -> field.unread().stream()).toList();
    }

    /** @param told on the UI thread, soon after something was typed */
    public void onTyping(Runnable told) {
        typed = told;
    }

    /** Puts the cursor into the first field. */
    public void focus() {
        fields.stream().findFirst().ifPresent(Field::focus);
    }

    /** Explains the field that was made last: where the mouse rests on its row, and to whoever has the screen read aloud. */
    public void help(String sentence) {
        List<Control> row = List.of(section.getChildren()).subList(rowStart, section.getChildren().length);
        row.forEach(control -> control.setToolTipText(sentence));
        row.stream().filter(control -> !(control instanceof Label)).forEach(control -> control.getAccessible().addAccessibleListener(
                AccessibleListener.getHelpAdapter(asked -> asked.result = sentence)));
    }

    private void label(String name, int vertical) {
        rowStart = section.getChildren().length;
        Label label = form.getToolkit().createLabel(section, name);
        label.setForeground(label.getDisplay().getSystemColor(SWT.COLOR_WIDGET_FOREGROUND));
        name(label, vertical);
    }

    /** GTK tells the height of a row only when there is one: a line of text and what stands around it. */
    static int rowHeight(Table table) {
        GC measure = new GC(table);
        int line = measure.getFontMetrics().getHeight();
        measure.dispose();
        return line + 8;
    }

    private static void name(Control label, int vertical) {
        GridData place = new GridData(SWT.FILL, vertical, false, false);
        place.widthHint = Math.max(NAME_WIDTH, label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        place.verticalIndent = vertical == SWT.TOP ? 4 : 0;
        label.setLayoutData(place);
    }

    private void place(Control control, String unit, int height) {
        // Room at the left for the mark of a message.
        GridData place = unit.isEmpty() ? new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1)
                : new GridData(SWT.BEGINNING, SWT.CENTER, false, false);
        place.widthHint = unit.isEmpty() ? FIELD_WIDTH : NUMBER_WIDTH;
        place.heightHint = height;
        place.horizontalIndent = 6;
        control.setLayoutData(place);
        if (!unit.isEmpty()) {
            Label beside = form.getToolkit().createLabel(section, unit, SWT.WRAP);
            GridData rest = new GridData(SWT.FILL, SWT.CENTER, true, false);
            // Where the window is narrow a long unit goes on in a second line instead of being cut.
            rest.widthHint = Math.min(NUMBER_WIDTH, beside.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
            beside.setLayoutData(rest);
        }
    }

    private Label told(Notation<?> notation) {
        if (!notation.tells()) {
            return null;
        }
        form.getToolkit().createLabel(section, "");
        Label line = form.getToolkit().createLabel(section, "", SWT.WRAP);
        line.setForeground(line.getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY));
        GridData place = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        place.horizontalIndent = 6;
        place.widthHint = FIELD_WIDTH;
        line.setLayoutData(place);
        return line;
    }
}
