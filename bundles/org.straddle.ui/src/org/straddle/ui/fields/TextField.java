package org.straddle.ui.fields;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IMessageManager;
import org.straddle.ui.parts.Completion;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/**
 * One value in a text box. It is read as it is typed; what cannot be read is marked and never reaches the event, what
 * can be read becomes one command when the typing rests, at Enter, or when the cursor leaves. Escape takes back what
 * was typed.
 */
public final class TextField<T> implements Field {

    private static final Catalogue TEXTS = Catalogue.of(TextField.class);

    /** Rest in typing after which the value is taken over, ms. */
    private static final int REST_MS = 1200;
    private static final int LONGEST_HEAD = 90;

    private final EventSession session;
    private final IMessageManager messages;
    private final Text text;
    private final Label told;
    private final ControlDecoration mark;
    private final Notation<T> notation;
    private final Slot<T> slot;
    private final Runnable commit = this::commit;
    private T shown;
    private String name = "";
    private boolean refused;
    private boolean pending;
    private boolean refreshing;
    private Command typed;

    TextField(EventSession session, IMessageManager messages, Text text, Label told, Notation<T> notation,
            Slot<T> slot) {
        this.session = session;
        this.messages = messages;
        this.text = text;
        this.told = told;
        this.notation = notation;
        this.slot = slot;
        mark = new ControlDecoration(text, SWT.LEFT | SWT.TOP);
        mark.setImage(FieldDecorationRegistry.getDefault().getFieldDecoration(FieldDecorationRegistry.DEC_ERROR)
                .getImage());
        show(slot.get().get());
        text.addModifyListener(change -> typing());
        text.addFocusListener(FocusListener.focusLostAdapter(left -> {
            commit();
            typed = null;
        }));
        text.addKeyListener(KeyListener.keyPressedAdapter(key -> keyPressed(key.keyCode)));
        text.addDisposeListener(gone -> {
            session.removePendingEdit(commit);
            session.settle(this);
        });
    }

    /** Names the field where its form tells what is wrong. */
    TextField<T> named(String label) {
        name = label;
        return this;
    }

    /** Shows in the empty field what could be written. */
    public void example(String words) {
        text.setMessage(words);
    }

    /** Offers what could be meant while it is typed. */
    public void completes(Supplier<List<String>> all) {
        Completion.on(text, all);
    }

    @Override
    public void focus() {
        text.setFocus();
    }

    @Override
    public void refresh() {
        T value = copy(slot.get().get());
        if (!pending && !Objects.equals(value, shown)) {
            show(value);
        } else if (!pending && !mark.isVisible()) {
            tell(value);
        }
    }

    @Override
    public Optional<String> unread() {
        return refused ? Optional.of(TEXTS.text("textField.unread", "field", field(), "text", text.getText())) : Optional.empty();
    }

    private String field() {
        return name.isEmpty() ? "none" : name;
    }

    private void show(T value) {
        refreshing = true;
        shown = copy(value);
        text.setText(notation.print(value));
        refreshing = false;
        content();
        tell(value);
    }

    private void complain(String message) {
        refused = true;
        String head = head(message);
        messages.addMessage(this, TEXTS.text("textField.problem", "field", field(), "problem", head), null, IMessageProvider.ERROR);
        mark.setDescriptionText(message);
        mark.show();
        session.refuse(this, TEXTS.text("textField.refused", "field", field(), "text", text.getText(), "problem", message));
        tell(message.substring(head.length()).strip());
    }

    private void content() {
        refused = false;
        messages.removeMessage(this);
        mark.hide();
        session.settle(this);
    }

    private void typing() {
        if (refreshing) {
            return;
        }
        text.getDisplay().timerExec(-1, commit);
        try {
            T value = notation.parse(text.getText());
            content();
            tell(value);
            pending = true;
            session.addPendingEdit(commit);
            text.getDisplay().timerExec(REST_MS, commit);
        } catch (IllegalArgumentException refused) {
            complain(refused.getMessage());
            pending = false;
            session.removePendingEdit(commit);
        }
    }

    private void commit() {
        session.removePendingEdit(commit);
        if (!pending || text.isDisposed()) {
            return;
        }
        T value = notation.parse(text.getText());
        if (!Objects.equals(value, copy(slot.get().get()))) {
            Command command = slot.set().apply(value);
            if (session.executeInstead(typed, command)) {
                typed = command;
            }
            shown = copy(slot.get().get());
        }
        pending = false;
    }

    private void keyPressed(int key) {
        if (key == SWT.ESC) {
            pending = false;
            session.removePendingEdit(commit);
            show(slot.get().get());
        } else if ((key == SWT.CR || key == SWT.KEYPAD_CR) && (text.getStyle() & SWT.MULTI) == 0) {
            commit();
        }
    }

    private void tell(T value) {
        tell(value == null ? "" : text.getText().isBlank() ? notation.told(value) : notation.told(text.getText(), value));
    }

    private void tell(String words) {
        if (told != null && !told.getText().equals(words)) {
            boolean otherHeight = words.lines().count() > told.getText().lines().count();
            told.setText(words);
            told.setToolTipText(words);
            if (otherHeight) {
                told.requestLayout();
            }
        }
    }

    /** The head of the form has room for one sentence. */
    private static String head(String message) {
        int end = message.length() > LONGEST_HEAD ? message.indexOf(". ") : -1;
        return end > 0 ? message.substring(0, end + 1) : message;
    }

    /** The event's own lists change under our hands: keep what they held. */
    @SuppressWarnings("unchecked")
    private static <T> T copy(T value) {
        return value instanceof List<?> list ? (T) List.copyOf(list) : value;
    }
}
