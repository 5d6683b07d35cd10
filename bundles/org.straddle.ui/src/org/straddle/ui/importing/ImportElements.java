package org.straddle.ui.importing;

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
import org.straddle.ui.work.FileWork;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/**
 * Reads files of element sets, says what they would change, and takes them over as one step. Files of Earth orientation
 * among them are copied into the event at once.
 */
public final class ImportElements {

    private static final Catalogue TEXTS = Catalogue.of(ImportElements.class);

    /** So many unknown birds are named; more would not be read. */
    private static final int NAMED = 12;

    private ImportElements() {
    }

    public static void ask(Shell shell) {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN | SWT.MULTI);
        dialog.setText(TEXTS.text("importElements.choose", "elements", Purpose.ELEMENTS.names(),
                "orientation", Purpose.ORIENTATION.names()));
        if (dialog.open() == null) {
            return;
        }
        List<Path> paths = Stream.of(dialog.getFileNames()).map(name -> Path.of(dialog.getFilterPath(), name))
                .toList();
        List<SkyFiles> read = new ArrayList<>();
        if (!FileWork.run(shell, TEXTS.text("importElements.reading"),
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
        boolean kept = FileWork.run(shell, TEXTS.text("importElements.keeping"), () -> {
            for (OrientationFile file : files) {
                done.add(file.keepIn(folder));
            }
        });
        if (!done.isEmpty()) {
            session.computeNow();
            MessageDialog.openInformation(shell, TEXTS.text("importElements.orientation"), String.join("\n\n", done));
        }
        return kept;
    }

    /** Says what element sets would change, and asks whether birds that the event does not have are wanted too. */
    public static void offer(Shell shell, List<ElementFile> files) {
        EventSession session = EventSession.current();
        ElementImport known = ElementImport.into(session.event(), files, number -> false);
        boolean strangers = !known.unmatched().isEmpty();
        if (known.isEmpty() && !strangers) {
            MessageDialog.openInformation(shell, TEXTS.text("importElements.title"), known.summary());
            return;
        }
        String[] buttons = strangers && !known.isEmpty()
                ? new String[] {TEXTS.text("importElements.known"), TEXTS.text("importElements.all"), TEXTS.text("importElements.cancel")}
                : strangers ? new String[] {TEXTS.text("importElements.add"),
                        TEXTS.text("importElements.cancel")} : new String[] {TEXTS.text("importElements.import"), TEXTS.text("importElements.cancel")};
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("importElements.title"),
                question(known), SWT.NONE, buttons);
        if (answer < 0 || answer == buttons.length - 1) {
            return;
        }
        boolean addBirds = strangers && answer == buttons.length - 2;
        take(shell, session, addBirds ? ElementImport.into(session.event(), files, number -> true) : known);
    }

    /** What is known, and who the strangers are. */
    private static String question(ElementImport known) {
        List<String> names = known.unmatched().stream().map(ElementSet::label).distinct().toList();
        return names.isEmpty() ? known.summary() : TEXTS.text("importElements.strangers", "summary", known.summary(),
                "names", String.join(", ", names.subList(0, Math.min(NAMED, names.size()))), "more", Math.max(0, names.size() - NAMED));
    }

    private static void take(Shell shell, EventSession session, ElementImport chosen) {
        try {
            session.execute(chosen.command(session.editingDomain(), session.folder(), Instant.now()));
        } catch (EventFolderException failure) {
            Problem.show(shell, failure.getMessage(), failure);
        }
    }
}
