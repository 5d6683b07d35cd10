package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.check.Tally;
import org.straddle.publish.NextRevision;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;

/** Writes briefs, packing lists and the announcement into a folder, from the last finished computation. */
final class PublishEvent {

    private PublishEvent() {
    }

    static void ask(Shell shell) {
        EventSession session = EventSession.current();
        if (session.computed().isEmpty() || session.computing()) {
            MessageDialog.openInformation(shell, "Publish", "The passes and checks are still being worked out.\n\n"
                    + "Publish when the foot of the window shows the findings.");
            return;
        }
        Computed computed = session.computed().orElseThrow();
        Tally tally = Tally.of(computed.findings());
        if (tally.blockers() > 0 && MessageDialog.open(MessageDialog.WARNING, shell, "Publish",
                "The event has " + tally + ".\n\nA plan with blockers cannot work as it stands.", SWT.NONE,
                "Do &not publish", "&Publish anyway") != 1) {
            return;
        }
        NextRevision next = NextRevision.of(computed.outlook());
        InputDialog revision = new InputDialog(shell, "Publish", "Revision of the schedule, counted from 1:",
                String.valueOf(next.number()), number(next));
        if (revision.open() != InputDialog.OK) {
            return;
        }
        DirectoryDialog folder = new DirectoryDialog(shell);
        folder.setText("Publish");
        folder.setMessage("Choose the folder for briefs, packing lists and the announcement.");
        String chosen = folder.open();
        if (chosen != null) {
            write(shell, computed, Integer.parseInt(revision.getValue().strip()), Path.of(chosen));
        }
    }

    private static void write(Shell shell, Computed computed, int revision, Path folder) {
        List<Path> files = new ArrayList<>();
        boolean done = FileWork.run(shell, "Publishing", () -> files.addAll(Publication.of(computed.outlook(),
                computed.findings(), new PublicationSettings(revision, Instant.now())).write(folder)));
        if (done) {
            EventSession session = EventSession.current();
            NextRevision next = NextRevision.of(computed.outlook()).numbered(revision);
            if (next.isNew()) {
                session.note(next.record(session.editingDomain(), session.event(), Instant.now()));
            }
            boolean saved = !session.dirty() || !session.folder().isReadOnly() && SaveEvent.save(shell);
            told(shell, files.size() + " files were written to " + folder + ".\n\n" + (saved
                    ? "The event is saved as it was published, with a note of revision " + revision + ".\n\n"
                    : "The event is not saved. Save it: else nobody will know what revision " + revision + " promised.\n\n")
                    + "Briefs name people and go to their own team alone; only the announcement is for everybody.", folder);
        }
    }

    private static void told(Shell shell, String words, Path folder) {
        if (MessageDialog.open(MessageDialog.INFORMATION, shell, "Publish", words, SWT.NONE, "&Show the folder",
                "Close") == 0) {
            Program.launch(folder.toString());
        }
    }

    private static IInputValidator number(NextRevision next) {
        return text -> !text.strip().matches("\\d{1,6}") ? "Enter a whole number from " + next.number() + "."
                : next.whyNot(Integer.parseInt(text.strip())).map(why -> why.replace('\n', ' ')).orElse(null);
    }
}
