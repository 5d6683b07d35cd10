package org.straddle.ui.workbench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.straddle.check.Tally;
import org.straddle.publish.Audience;
import org.straddle.publish.NextRevision;
import org.straddle.publish.PreparedSheets;
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

    private static void write(Shell shell, Computed computed, int number, Path folder) {
        Instant now = Instant.now();
        NextRevision revision = NextRevision.of(computed.outlook()).numbered(number);
        if (revision.isNew() && EventSession.current().folder().isReadOnly()) {
            MessageDialog.openInformation(shell, "Publish", "This event is open only to read it, so revision " + number
                    + " cannot be written down.\n\nSave the event to another folder, and publish that one.");
            return;
        }
        Publication[] publication = new Publication[1];
        PreparedSheets[] prepared = new PreparedSheets[1];
        if (!FileWork.run(shell, "Preparing the sheets", () -> publication[0] = Publication.of(computed.outlook(),
                computed.findings(), new PublicationSettings(number, now)))
                || MessageDialog.open(MessageDialog.QUESTION, shell, "Publish", String.join("\n", publication[0].outline()),
                        SWT.NONE, "&Publish revision " + number, "Cancel") != 0
                || !FileWork.run(shell, "Preparing the sheets", () -> prepared[0] = publication[0].prepare(folder))) {
            return;
        }
        try (PreparedSheets sheets = prepared[0]) {
            List<Path> files = new ArrayList<>();
            if (noted(shell, revision, now) && FileWork.run(shell, "Publishing", () -> files.addAll(sheets.putInPlace()))) {
                told(shell, files.size() + " files were written to " + folder + ".\n\nThe event knows revision " + number
                        + ".\n\nThe folder " + Audience.PUBLIC.folder() + " is for everybody. The folder " + Audience.PRIVATE.folder()
                        + " names people and whom to call: give each team its own sheets, and never upload it.", folder);
            }
        }
    }

    /** Writes the revision down and saves, before any sheet is out: its number is then never given to another schedule. */
    private static boolean noted(Shell shell, NextRevision revision, Instant now) {
        EventSession session = EventSession.current();
        if (!revision.isNew()) {
            return true;
        }
        Command note = revision.record(session.editingDomain(), session.event(), now);
        session.note(note);
        if (SaveEvent.save(shell)) {
            return true;
        }
        session.takeBack(note);
        MessageDialog.openError(shell, "Publish", "Nothing was published, because revision " + revision.number()
                + " could not be written down in the event.\n\nSave the event first, here or to another folder, then publish again.");
        return false;
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
