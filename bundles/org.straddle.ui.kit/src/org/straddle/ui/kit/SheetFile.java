package org.straddle.ui.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import org.straddle.ui.session.UiThread;
import org.straddle.words.Catalogue;

/** Writes a packing sheet to a file in the background: a slow disk must not hold up the window. */
final class SheetFile {

    private static final Catalogue TEXTS = Catalogue.of(SheetFile.class);

    private SheetFile() {
    }

    /** Asks where to, and writes there. */
    static void export(Shell shell, Supplier<byte[]> content, SheetForm form, String suggestedName) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("sheetFile.exportPackingList"));
        dialog.setFileName(suggestedName);
        boolean page = form == SheetForm.HTML || form == SheetForm.PHONE;
        dialog.setFilterExtensions(new String[] {page ? "*.html" : "*.pdf"});
        dialog.setFilterNames(new String[] {page ? TEXTS.text("sheetFile.webPageHtml") : TEXTS.text("sheetFile.pdf")});
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen != null) {
            write(shell, content, () -> Path.of(chosen), file -> { });
        }
    }

    /** Opens the sheet where it can be printed. */
    static void openInBrowser(Shell shell, Supplier<byte[]> content, String name) {
        write(shell, content, () -> Files.createTempDirectory("packing").resolve(name), file -> {
            if (!Program.launch(file.toUri().toString())) {
                MessageDialog.openInformation(shell, TEXTS.text("sheetFile.printPackingList"),
                        TEXTS.text("sheetFile.programWebPages", "file", file));
            }
        });
    }

    private interface Place {
        Path find() throws IOException;
    }

    private interface Then {
        void with(Path file);
    }

    private static void write(Shell shell, Supplier<byte[]> content, Place place, Then then) {
        Job.create(TEXTS.text("sheetFile.writingPackingList"), (ICoreRunnable) monitor -> {
            try {
                Path file = Files.write(place.find(), content.get());
                onScreen(shell, () -> then.with(file));
            } catch (IOException | UncheckedIOException failure) {
                onScreen(shell, () -> MessageDialog.openError(shell,
                        "Straddle", TEXTS.text("sheetFile.packingListCould", "reason", failure.getMessage())));
            }
        }).schedule();
    }

    private static void onScreen(Shell shell, Runnable show) {
        if (!shell.isDisposed()) {
            UiThread.later(shell, () -> {
                if (!shell.isDisposed()) {
                    show.run();
                }
            });
        }
    }
}
