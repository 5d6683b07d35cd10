package org.straddle.ui.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.demo.DemoEvent;
import org.straddle.store.EventFolder;
import org.straddle.words.Catalogue;

/** Asks for the folder, then opens, makes or saves the event there. */
public final class EventDialogs {

    private static final Catalogue TEXTS = Catalogue.of(EventDialogs.class);

    private EventDialogs() {
    }

    public static void open(Shell shell) {
        String chosen = folder(shell, TEXTS.text("eventDialogs.open"), TEXTS.text("eventDialogs.open.text"));
        if (chosen != null) {
            OpenEvent.open(shell, Path.of(chosen));
        }
    }

    public static void makeDemo(Shell shell) {
        String chosen = folder(shell, TEXTS.text("eventDialogs.demo"),
                TEXTS.text("eventDialogs.demo.text"));
        if (chosen != null) {
            Path folder = empty(Path.of(chosen)) ? Path.of(chosen) : free(Path.of(chosen), "skerry-demo");
            OpenEvent.open(shell, TEXTS.text("eventDialogs.demo.making"), () -> {
                DemoEvent.write(folder);
                return EventFolder.open(folder);
            });
        }
    }

    /** True if the event was saved to a folder that the user chose. */
    public static boolean saveAs(Shell shell) {
        String chosen = folder(shell, TEXTS.text("eventDialogs.saveAs"), TEXTS.text("eventDialogs.saveAs.text"));
        if (chosen == null) {
            return false;
        }
        if (empty(Path.of(chosen))) {
            return SaveEvent.saveAs(shell, Path.of(chosen));
        }
        MessageDialog.openError(shell, TEXTS.text("eventDialogs.saveAs"), TEXTS.text("eventDialogs.saveAs.notempty", "folder", chosen));
        return false;
    }

    private static String folder(Shell shell, String title, String message) {
        DirectoryDialog dialog = new DirectoryDialog(shell);
        dialog.setText(title);
        dialog.setMessage(message);
        RecentEvents.list().stream().findFirst().map(Path::getParent)
                .ifPresent(parent -> dialog.setFilterPath(parent.toString()));
        return dialog.open();
    }

    /** A free folder for an event of that name, beside the event that was open last, else in the user's home. */
    public static Path offered(String name) {
        String plain = Normalizer.normalize(name.strip(), Normalizer.Form.NFD).replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        Path parent = RecentEvents.list().stream().findFirst().map(Path::getParent)
                .orElse(Path.of(System.getProperty("user.home")));
        return free(parent, plain.isEmpty() ? "event" : plain);
    }

    public static boolean empty(Path folder) {
        if (!Files.exists(folder)) {
            return true;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** The name, or the name with the first number that is free. */
    private static Path free(Path parent, String name) {
        Path folder = parent.resolve(name);
        for (int number = 2; !empty(folder); number++) {
            folder = parent.resolve(name + "-" + number);
        }
        return folder;
    }
}
