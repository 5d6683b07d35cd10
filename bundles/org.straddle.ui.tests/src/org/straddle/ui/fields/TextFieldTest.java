package org.straddle.ui.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.ManagedForm;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.store.EventFolder;
import org.straddle.ui.session.EventSession;

/** Needs a display, as the workbench does. */
class TextFieldTest {

    @TempDir
    Path folder;

    private final Site site = Fresh.site();
    private Display display;
    private EventSession session;
    private ManagedForm form;
    private TextField<Double> field;
    private Text text;

    @BeforeEach
    void open() throws Exception {
        display = Display.getDefault();
        org.straddle.model.Event event = Fresh.event("Ridge rove");
        event.getSites().add(site);
        site.setMarkErrorM(5);
        session = EventSession.current();
        session.open(EventFolder.create(folder.resolve("event"), event));
        Shell shell = new Shell(display);
        form = new ManagedForm(shell);
        text = new Text(form.getForm().getBody(), SWT.SINGLE);
        field = new TextField<>(session, form.getMessageManager(), text, null, Numbers.between(0, 100),
                Slot.of(session, site, Literals.SITE__MARK_ERROR_M));
    }

    @AfterEach
    void close() {
        form.dispose();
        for (Shell shell : display.getShells()) {
            shell.dispose();
        }
        session.close();
    }

    @Test
    void showsTheValueAndFollowsUndo() {
        assertEquals("5", text.getText());
        enter("7,5");
        assertEquals(7.5, site.getMarkErrorM());
        assertEquals("Change mark error", session.undoLabel());
        session.undo();
        field.refresh();
        assertEquals("5", text.getText());
    }

    @Test
    void whatCannotBeReadIsKnownToWhoeverSavesUntilItIsFixed() {
        text.setText("12abc");
        assertEquals(List.of("“12abc”: Enter a number from 0 to 100."), session.refused());
        text.setText("500");
        assertEquals(1, session.refused().size());
        text.setText("12");
        assertEquals(List.of(), session.refused());
        text.setText("x");
        text.dispose();
        assertEquals(List.of(), session.refused());
    }

    /** A form that is closed would take it along, so whoever closes it can ask. */
    @Test
    void whatCannotBeReadIsTheFormsAloneUntilItIsReadOrTakenBack() {
        field.named("Mark error");
        assertEquals(Optional.empty(), field.unread());
        text.setText("12abc");
        assertEquals(Optional.of("Mark error “12abc”"), field.unread());
        text.setText("12");
        assertEquals(Optional.empty(), field.unread());
        text.setText("twelve");
        key(SWT.ESC);
        assertEquals(Optional.empty(), field.unread());
    }

    @Test
    void whatCannotBeReadNeverReachesTheEvent() {
        text.setText("500");
        leave();
        assertEquals(5, site.getMarkErrorM());
        assertFalse(session.canUndo());
        field.refresh();
        assertEquals("500", text.getText(), "the user may still fix it");
    }

    @Test
    void aWordTypedInStepsIsOneStepOfUndo() {
        enter("1");
        enter("12");
        assertEquals(12, site.getMarkErrorM());
        session.undo();
        assertEquals(5, site.getMarkErrorM());
        assertFalse(session.canUndo());
    }

    @Test
    void leavingTheFieldPartsTheSteps() {
        enter("1");
        leave();
        enter("2");
        session.undo();
        assertEquals(1, site.getMarkErrorM());
    }

    @Test
    void escapeTakesBackWhatWasTyped() {
        text.setText("9");
        assertTrue(session.dirty());
        key(SWT.ESC);
        leave();
        assertEquals("5", text.getText());
        assertEquals(5, site.getMarkErrorM());
        assertFalse(session.dirty());
    }

    @Test
    void typedTextIsSavedEvenIfTheCursorIsStillThere() {
        text.setText("9");
        session.commitPendingEdits();
        assertEquals(9, site.getMarkErrorM());
    }

    private void enter(String typed) {
        text.setText(typed);
        key(SWT.CR);
    }

    private void key(int code) {
        Event key = new Event();
        key.keyCode = code;
        text.notifyListeners(SWT.KeyDown, key);
    }

    private void leave() {
        text.notifyListeners(SWT.FocusOut, new Event());
    }
}
