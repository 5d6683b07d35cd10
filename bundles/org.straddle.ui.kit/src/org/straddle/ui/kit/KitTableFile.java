package org.straddle.ui.kit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.kit.table.KitFile;
import org.straddle.kit.table.KitImport;
import org.straddle.kit.table.TickImport;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.UiThread;
import org.straddle.words.Catalogue;

/** Tables of kits in and out; a table with one wrong line changes nothing. */
final class KitTableFile {

    private static final Catalogue TEXTS = Catalogue.of(KitTableFile.class);

    private static final int MOST_LINES = 10;

    private KitTableFile() {
    }

    /** Asks for a file, reads it in the background, and takes it over as one step of undo after a question. */
    static void bringIn(Shell shell, EventSession session) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText(TEXTS.text("kitTable.bring"));
        dialog.setFilterExtensions(new String[] {"*.csv;*.tsv;*.txt", "*"});
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Job.create(TEXTS.text("kitTable.reading"), (ICoreRunnable) monitor -> {
            try {
                SourceTable table = KitFile.read(Path.of(chosen));
                UiThread.later(shell, () -> take(shell, session, table));
            } catch (ReadException e) {
                UiThread.later(shell, () -> MessageDialog.openError(shell, TEXTS.text("kitTable.bring"), e.getMessage()));
            }
        }).schedule();
    }

    /** Ticks that somebody sent as text. */
    static void paste(Shell shell, EventSession session) {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        try {
            String text = (String) clipboard.getContents(TextTransfer.getInstance());
            if (text == null || text.isBlank()) {
                MessageDialog.openError(shell, TEXTS.text("kitTable.bring"), TEXTS.text("kitTable.clipboard.empty"));
            } else {
                take(shell, session, KitFile.read(TEXTS.text("kitTable.clipboard"), text.strip().getBytes(StandardCharsets.UTF_8)));
            }
        } catch (ReadException e) {
            MessageDialog.openError(shell, TEXTS.text("kitTable.bring"), e.getMessage());
        } finally {
            clipboard.dispose();
        }
    }

    private static void takeTicks(Shell shell, EventSession session, TickImport found) {
        String title = TEXTS.text("kitTable.bring");
        if (!found.refused().isEmpty()) {
            MessageDialog.openError(shell, title, TEXTS.text("kitTable.refused", "lines", found.refused().stream().limit(MOST_LINES)
                    .map(refused -> TEXTS.text("kitTable.line", "line", refused.line(), "why", refused.why()))
                    .collect(Collectors.joining("\n")), "more", Math.max(0, found.refused().size() - MOST_LINES)));
        } else if (found.isEmpty()) {
            MessageDialog.openInformation(shell, title, TEXTS.text("kitTable.noTicks", "known", found.known()));
        } else if (MessageDialog.openQuestion(shell, title, TEXTS.text("kitTable.ticks", "summary", found.summary()))) {
            session.execute(found.command(session.editingDomain()));
        }
    }

    private static void take(Shell shell, EventSession session, SourceTable table) {
        if (shell.isDisposed() || !session.isOpen()) {
            return;
        }
        if (TickImport.isMeant(table)) {
            takeTicks(shell, session, TickImport.into(session.event(), table));
            return;
        }
        KitImport found = KitImport.into(session.event(), table, table.name().replaceFirst("\\.[^.]*$", ""));
        String title = TEXTS.text("kitTable.bring");
        if (!found.refused().isEmpty()) {
            MessageDialog.openError(shell, title, TEXTS.text("kitTable.refused", "lines", found.refused().stream().limit(MOST_LINES)
                    .map(refused -> TEXTS.text("kitTable.line", "line", refused.line(), "why", refused.why()))
                    .collect(Collectors.joining("\n")), "more", Math.max(0, found.refused().size() - MOST_LINES)));
            return;
        }
        String remarks = Stream.concat(table.remarks().stream(), found.remarks().stream()).collect(Collectors.joining("\n"));
        String question = TEXTS.text("kitTable.question", "added", found.added().size(), "changed", found.changed().size(), "known",
                found.known(), "remarks", remarks);
        if (found.isEmpty()) {
            MessageDialog.openInformation(shell, title, TEXTS.text("kitTable.nothing", "known", found.known(), "remarks", remarks));
        } else if (MessageDialog.openQuestion(shell, title, question)) {
            session.execute(found.command(session.editingDomain()));
        }
    }

    static void export(Shell shell, PackingList list, String name) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(TEXTS.text("kitTable.give"));
        dialog.setFileName(name);
        dialog.setFilterExtensions(new String[] {"*.csv"});
        dialog.setOverwrite(true);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        byte[] table = KitFile.write(list.rows().stream().map(PackingRow::item).toList()).getBytes(StandardCharsets.UTF_8);
        Job.create(TEXTS.text("kitTable.writing"), (ICoreRunnable) monitor -> {
            try {
                Files.write(Path.of(chosen), table);
            } catch (IOException e) {
                UiThread.later(shell, () -> MessageDialog.openError(shell, TEXTS.text("kitTable.give"),
                        TEXTS.text("kitTable.notWritten", "file", chosen, "reason", String.valueOf(e.getMessage()))));
            }
        }).schedule();
    }
}
