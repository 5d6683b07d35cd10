package org.straddle.ui.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Fresh;
import org.straddle.model.Photo;
import org.straddle.model.Site;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.store.EventFolder;
import org.straddle.store.UnsavedEdits;

/** Needs a display, as the workbench does. */
class EventSessionTest {

    /** Longer than any computation of these small events; only a hang reaches it. */
    private static final long PATIENCE_S = 60;

    @TempDir
    Path folder;

    private final List<String> heard = new ArrayList<>();
    private Display display;
    private EventSession session;

    @BeforeEach
    void open() throws Exception {
        display = Display.getDefault();
        session = new EventSession(display);
        session.addListener(new SessionListener() {
            @Override
            public void opened(EventSession from) {
                heard.add("opened");
            }

            @Override
            public void closed(EventSession from) {
                heard.add("closed");
            }

            @Override
            public void edited(EventSession from) {
                heard.add("edited");
            }

            @Override
            public void computed(EventSession from, Computed computed) {
                heard.add("computed " + computed.snapshot().getName());
            }
        });
        session.open(EventFolder.create(folder.resolve("event"), Fresh.event("Ridge rove")));
    }

    @AfterEach
    void close() {
        session.close();
    }

    @Test
    void computesOnASnapshotAfterOpening() {
        until(() -> session.computed().isPresent());
        assertEquals(List.of("opened", "computed Ridge rove"), heard.stream().filter(what -> !what.equals("edited"))
                .toList());
        assertFalse(session.computed().orElseThrow().snapshot() == session.event());
        assertEquals(session.event().getId(), session.computed().orElseThrow().snapshot().getId());
    }

    @Test
    void theNewestChangeWins() {
        for (String name : List.of("First", "Second", "Third")) {
            session.execute(Edit.set(session.editingDomain(), session.event(), Literals.EVENT__NAME, name));
            session.computeNow();
        }
        until(() -> heard.contains("computed Third"));
        assertEquals(List.of("computed Third"), heard.stream().filter(what -> what.startsWith("computed")).toList());
    }

    @Test
    void undoRedoAndDirty() {
        assertFalse(session.dirty());
        rename("Other");
        assertTrue(session.dirty());
        assertEquals("Change name", session.undoLabel());
        session.undo();
        assertEquals("Ridge rove", session.event().getName());
        assertFalse(session.dirty());
        session.redo();
        assertEquals("Other", session.event().getName());
        assertTrue(session.dirty());
    }

    /** What went out cannot be called back by undo. */
    @Test
    void aNoteIsNoStepOfUndoButHasToBeSaved() throws Exception {
        rename("Other");
        Revision revision = StraddleFactory.eINSTANCE.createRevision();
        session.note(AddCommand.create(session.editingDomain(), session.event(), Literals.EVENT__REVISIONS, revision));
        session.undo();
        assertEquals("Ridge rove", session.event().getName());
        assertEquals(List.of(revision), session.event().getRevisions());
        assertTrue(session.dirty(), "though the edit is undone");
        assertFalse(session.canUndo());
        save();
        assertFalse(session.dirty());
    }

    @Test
    void whatIsSavedComesBack() throws Exception {
        rename("Other");
        save();
        assertFalse(session.dirty());
        session.close();
        try (EventFolder again = EventFolder.open(folder.resolve("event"))) {
            assertEquals("Other", again.event().getName());
        }
    }

    private void save() throws Exception {
        SaveRun save = session.beginSave();
        save.write();
        session.saved(save);
    }

    /** A disk so slow that the user edits on, undoes and edits again before the save is written. */
    @Test
    void anEditWhileASaveRunsIsNeverMarkedClean() throws Exception {
        rename("Saved");
        SaveRun slow = session.beginSave();
        rename("Typed meanwhile");
        Thread disk = new Thread(() -> assertDoesNotThrow(slow::write));
        disk.start();
        disk.join();
        session.saved(slow);
        assertTrue(session.dirty(), "the later edit is not on the disk");
        try (EventFolder seen = EventFolder.openReadOnly(folder.resolve("event"))) {
            assertEquals("Saved", seen.event().getName());
        }
        session.undo();
        assertFalse(session.dirty(), "back at what was saved");
        session.redo();
        save();
        assertFalse(session.dirty());
        SaveRun again = session.beginSave();
        session.undo();
        rename("Another way");
        again.write();
        session.saved(again);
        assertTrue(session.dirty(), "what was saved is not on the stack any more");
        session.undo();
        assertTrue(session.dirty());
        Revision revision = StraddleFactory.eINSTANCE.createRevision();
        SaveRun before = session.beginSave();
        session.note(AddCommand.create(session.editingDomain(), session.event(), Literals.EVENT__REVISIONS, revision));
        before.write();
        session.saved(before);
        assertTrue(session.dirty(), "the note came later");
        save();
        assertFalse(session.dirty());
        try (EventFolder seen = EventFolder.openReadOnly(folder.resolve("event"))) {
            assertEquals(1, seen.event().getRevisions().size());
        }
    }

    @Test
    void unsavedEditsComeBackAfterACrash() throws Exception {
        rename("Edited, not saved");
        byte[] elements = { '1' };
        String file = session.folder().addPhoto("a.jpg", elements);
        Site site = Fresh.site();
        site.getVisits().add(Fresh.visit());
        Photo photo = StraddleFactory.eINSTANCE.createPhoto();
        photo.setFile(file);
        site.getVisits().get(0).getPhotos().add(photo);
        session.execute(AddCommand.create(session.editingDomain(), session.event(), Literals.EVENT__SITES, site));
        session.keepUnsaved();
        // The program ends without closing the session: the system drops the lock.
        session.folder().close();
        Path event = folder.resolve("event");
        try (EventFolder seen = EventFolder.openReadOnly(event)) {
            assertEquals("Ridge rove", seen.event().getName(), "the event itself is as it was saved");
        }
        UnsavedEdits.Found found = UnsavedEdits.of(event).find().orElseThrow();
        assertFalse(found.changedSince());
        EventSession after = new EventSession(display);
        after.open(EventFolder.openUnsaved(event, found));
        after.broughtBack();
        assertEquals("Edited, not saved", after.event().getName());
        assertArrayEquals(elements, after.folder().photo(file).open().readAllBytes());
        assertTrue(after.dirty());
        SaveRun save = after.beginSave();
        save.write();
        after.saved(save);
        assertFalse(after.dirty());
        assertTrue(UnsavedEdits.of(event).find().isEmpty(), "saved: nothing to bring back");
        assertArrayEquals(elements, Files.readAllBytes(event.resolve("photos").resolve(file)));
        after.close();
    }

    /** A kill of the window takes neither text that can be read nor text that cannot. */
    @Test
    void textThatStandsInFieldsComesBack() throws Exception {
        Path event = folder.resolve("event");
        Object field = new Object();
        session.addPendingEdit(() -> rename("Typed, and nobody left the field"));
        session.refuse(field, "Latitude: “64.1x”");
        session.typing(this, "Notes: “gate\nlocked”");
        session.keepUnsaved();
        UnsavedEdits.Found found = UnsavedEdits.of(event).find().orElseThrow();
        assertEquals(List.of("Latitude: “64.1x”", "Notes: “gate\nlocked”"), found.typed());
        session.settle(field);
        session.settle(this);
        session.undo();
        assertFalse(session.dirty(), "what was kept is one step of undo");
        session.refuse(field, "Longitude: “20 e”");
        session.keepUnsaved();
        assertEquals(List.of("Longitude: “20 e”"), UnsavedEdits.of(event).find().orElseThrow().typed(), "without any edit too");
        session.folder().close();
        EventSession after = new EventSession(display);
        after.open(EventFolder.openUnsaved(event, found));
        assertEquals("Typed, and nobody left the field", after.event().getName());
        after.close();
    }

    @Test
    void editsThatWereUndoneOrLetGoDoNotComeBack() throws Exception {
        Path event = folder.resolve("event");
        rename("Edited");
        session.keepUnsaved();
        assertTrue(UnsavedEdits.of(event).find().isPresent());
        session.undo();
        session.keepUnsaved();
        assertTrue(UnsavedEdits.of(event).find().isEmpty(), "undone");
        rename("Edited again");
        session.keepUnsaved();
        session.close();
        assertTrue(UnsavedEdits.of(event).find().isEmpty(), "let go");
    }

    @Test
    void editsOfAnEventThatChangedSinceSaySo() throws Exception {
        Path event = folder.resolve("event");
        rename("Edited");
        session.keepUnsaved();
        session.folder().close();
        try (EventFolder other = EventFolder.open(event)) {
            other.event().setName("By somebody else");
            other.save();
        }
        assertTrue(UnsavedEdits.of(event).find().orElseThrow().changedSince());
        UnsavedEdits.of(event).discard();
    }

    @Test
    void lettersOfOneWordAreOneStep() {
        var typed = Edit.set(session.editingDomain(), session.event(), Literals.EVENT__NAME, "O");
        session.executeInstead(null, typed);
        session.executeInstead(typed, Edit.set(session.editingDomain(), session.event(), Literals.EVENT__NAME, "Ot"));
        session.undo();
        assertEquals("Ridge rove", session.event().getName());
        assertFalse(session.canUndo());
    }

    @Test
    void typedTextIsCommittedBeforeUndo() {
        session.addPendingEdit(() -> rename("Typed"));
        assertTrue(session.dirty());
        session.undo();
        assertEquals("Ridge rove", session.event().getName());
        session.redo();
        assertEquals("Typed", session.event().getName());
    }

    @Test
    void liveThingsAreFoundByTheIdsOfTheSnapshot() {
        Site quay = Fresh.site();
        session.execute(Edit.add(session.editingDomain(), session.event(), Literals.EVENT__SITES, quay, "site"));
        assertEquals(quay, session.live(quay.getId()).orElseThrow());
        session.undo();
        assertTrue(session.live(quay.getId()).isEmpty());
    }

    @Test
    void aClosedSessionHoldsNothing() {
        session.close();
        assertFalse(session.isOpen());
        assertTrue(session.computed().isEmpty());
        assertFalse(session.canUndo());
        assertEquals("closed", heard.get(heard.size() - 1));
    }

    private void rename(String name) {
        assertTrue(session.execute(Edit.set(session.editingDomain(), session.event(), Literals.EVENT__NAME, name)));
    }

    /** Sleeps until something is told on this thread; a timer wakes it when nothing is. */
    private void until(BooleanSupplier done) {
        Instant end = Instant.now().plusSeconds(PATIENCE_S);
        Runnable alarm = () -> { };
        display.timerExec((int) (1000 * PATIENCE_S), alarm);
        while (!done.getAsBoolean()) {
            assertTrue(Instant.now().isBefore(end), "waited too long; heard " + heard);
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        display.timerExec(-1, alarm);
    }
}
