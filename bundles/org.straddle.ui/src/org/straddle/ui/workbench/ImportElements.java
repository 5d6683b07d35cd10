package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementImport;
import org.straddle.exchange.elements.OrientationFile;
import org.straddle.exchange.elements.SkyFiles;
import org.straddle.exchange.formats.Purpose;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.ui.session.EventSession;

/**
 * Reads files of element sets, says what they would change, and takes them over as one step. Files of Earth orientation
 * among them are copied into the event at once.
 */
final class ImportElements {

    /** So many unknown birds are named; more would not be read. */
    private static final int NAMED = 12;

    private ImportElements() {
    }

    static void ask(Shell shell) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN | SWT.MULTI);
        dialog.setText("Import element sets (" + Purpose.ELEMENTS.names() + ") or Earth orientation (" + Purpose.ORIENTATION.names() + ")");
        if (dialog.open() == null) {
            return;
        }
        List<Path> paths = Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name))
                .toList();
        List<SkyFiles> read = new ArrayList<>();
        if (!FileWork.run(shell, "Reading element sets",
                () -> read.add(SkyFiles.read(paths, new NullProgressMonitor())))) {
            return;
        }
        SkyFiles files = read.get(0);
        if ((files.orientation().isEmpty() || keep(shell, files.orientation())) && !files.elements().isEmpty()) {
            offer(shell, files.elements());
        }
    }

    private static boolean keep(Shell shell, List<OrientationFile> files) {
        EventSession session = EventSession.current();
        List<String> done = new ArrayList<>();
        EventFolder folder = session.folder();
        boolean kept = FileWork.run(shell, "Keeping Earth orientation", () -> {
            for (OrientationFile file : files) {
                done.add(file.keepIn(folder));
            }
        });
        if (!done.isEmpty()) {
            session.computeNow();
            MessageDialog.openInformation(shell, "Import Earth orientation", String.join("\n\n", done));
        }
        return kept;
    }

    private static void offer(Shell shell, List<ElementFile> files) {
        EventSession session = EventSession.current();
        ElementImport known = ElementImport.into(session.event(), files, number -> false);
        boolean strangers = !known.unmatched().isEmpty();
        if (known.isEmpty() && !strangers) {
            MessageDialog.openInformation(shell, "Import element sets", known.summary());
            return;
        }
        String[] buttons = strangers && !known.isEmpty()
                ? new String[] {"&Import for known birds", "Import and &add the other birds", "Cancel"}
                : strangers ? new String[] {"&Add these birds", "Cancel"} : new String[] {"&Import", "Cancel"};
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, "Import element sets",
                known.summary() + names(known.unmatched()), SWT.NONE, buttons);
        if (answer < 0 || answer == buttons.length - 1) {
            return;
        }
        boolean addBirds = strangers && answer == buttons.length - 2;
        take(shell, session, addBirds ? ElementImport.into(session.event(), files, number -> true) : known);
    }

    /** Who the strangers are. */
    private static String names(List<ElementSet> strangers) {
        List<String> names = strangers.stream().map(ElementSet::label).distinct().toList();
        if (names.isEmpty()) {
            return "";
        }
        int more = names.size() - NAMED;
        return "\n\nNot in the event: " + String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
                + (more > 0 ? " and " + more + " more." : ".");
    }

    private static void take(Shell shell, EventSession session, ElementImport chosen) {
        try {
            session.execute(chosen.command(session.editingDomain(), session.folder(), Instant.now()));
        } catch (EventFolderException failure) {
            Problem.show(shell, failure.getMessage(), failure);
        }
    }
}
