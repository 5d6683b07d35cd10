package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.store.EventFolder;
import org.straddle.store.UnsavedEdits;
import org.straddle.ui.folder.OpenEvent;
import org.straddle.ui.session.Edit;

/** The window when the disk fails it: it says what happened, loses no edit, and spoils nothing of others. */
class FaultsTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private static final String SAVE = "org.eclipse.ui.file.save";

    private static Site site() {
        return WINDOW.session().event().getSites().get(0);
    }

    private static void rename(String name) {
        WINDOW.ui(() -> {
            DemoWindow.shown("org.straddle.ui.findings");
            WINDOW.session().execute(Edit.set(WINDOW.session().editingDomain(), site(), Literals.SITE__NAME, name));
        });
    }

    private static String words(Shell dialog) {
        return RunningWorkbench.below(dialog, Label.class).stream().map(Label::getText).filter(text -> !text.isBlank())
                .collect(Collectors.joining(" | "));
    }

    /** Saves with the key; what the window says of it. */
    private static String refusedSave() {
        String[] said = new String[1];
        WINDOW.command(SAVE);
        WINDOW.answer("Straddle", dialog -> said[0] = words(dialog));
        assertTrue(WINDOW.ask(() -> WINDOW.session().dirty()), "the edits are still unsaved");
        return said[0];
    }

    private static void saved() {
        WINDOW.command(SAVE);
        WINDOW.until("it is saved", () -> !WINDOW.session().dirty());
    }

    @Test
    void theFolderIsGone() throws IOException {
        rename("Edited while the folder was away");
        Path away = WINDOW.beside("away");
        Files.move(WINDOW.event(), away);
        String said = refusedSave();
        assertTrue(said.contains("gone"), said);
        assertFalse(Files.exists(WINDOW.event()), "no folder without element sets in its place");
        Files.move(away, WINDOW.event());
        saved();
        assertTrue(WINDOW.files().toString().contains("Edited while the folder was away"));
    }

    @Test
    void somebodyElseChangedTheFile() throws IOException {
        String file = WINDOW.ask(() -> WINDOW.session().folder().fileOf(site()));
        Path path = WINDOW.event().resolve(file);
        String before = Files.readString(path);
        Files.writeString(path, before.replaceFirst("name=\"", "name=\"Theirs "));
        rename("Ours");
        Map<String, String> theirs = WINDOW.files();
        String said = refusedSave();
        assertTrue(said.contains(file), said);
        assertEquals(theirs, WINDOW.files(), "nothing of it was overwritten");
        Files.writeString(path, before);
        saved();
        assertTrue(Files.readString(path).contains("Ours"));
    }

    /** Where this user may make a small disk. */
    @Test
    void theDiskIsFull() throws Exception {
        Path disk = Files.createDirectory(WINDOW.beside("small"));
        assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=3m", "straddle-test", disk.toString()) == 0, "a small disk takes root");
        try {
            Path event = disk.resolve("demo");
            DemoEvent.write(event);
            EventFolder opened = EventFolder.open(event);
            WINDOW.ui(() -> WINDOW.session().open(opened));
            WINDOW.computed();
            rename("Edited on a full disk");
            Path filler = disk.resolve("filler");
            fill(filler);
            String said = refusedSave();
            assertTrue(said.contains("No space left on device"), said);
            Files.delete(filler);
            saved();
            try (EventFolder read = EventFolder.openReadOnly(event)) {
                assertEquals("Edited on a full disk", read.event().getSites().get(0).getName());
            }
        } finally {
            WINDOW.ui(() -> WINDOW.session().close());
            run("umount", disk.toString());
            WINDOW.open();
        }
    }

    private static int run(String... words) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor();
        } catch (IOException noSuchProgram) {
            return -1;
        }
    }

    private static void fill(Path filler) throws IOException {
        try (OutputStream out = Files.newOutputStream(filler)) {
            byte[] block = new byte[4096];
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            assertTrue(Files.size(filler) > 0);
        }
    }

    /** A program that ended without asking left edits, and text in a field. */
    @Test
    void editsOfAnEndedProgramAreOffered() throws IOException {
        Path event = WINDOW.beside("crashed");
        DemoEvent.write(event);
        try (EventFolder crashed = EventFolder.open(event)) {
            crashed.event().getSites().get(0).setName("Never saved");
            crashed.keepingUnsaved(List.of("Latitude: “64.1x”")).write();
        }
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.findings"));
        WINDOW.later(() -> OpenEvent.open(DemoWindow.page().getWorkbenchWindow().getShell(), event));
        WINDOW.answer("Unsaved edits", dialog -> {
            assertTrue(words(dialog).contains("It kept the edits of"), words(dialog));
            assertEquals(List.of("Latitude: “64.1x”"), RunningWorkbench.below(dialog, Text.class).stream().map(Text::getText).toList());
        });
        WINDOW.until("the event is open", () -> WINDOW.session().isOpen() && WINDOW.session().folder().path().equals(event));
        assertEquals("Never saved", WINDOW.ask(() -> site().getName()));
        assertTrue(WINDOW.ask(() -> WINDOW.session().dirty()));
        WINDOW.save();
        assertTrue(UnsavedEdits.of(event).find().isEmpty(), "saved: nothing is offered again");
        WINDOW.ui(() -> WINDOW.session().close());
        WINDOW.open();
    }
}
