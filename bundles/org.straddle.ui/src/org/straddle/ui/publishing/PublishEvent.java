package org.straddle.ui.publishing;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;
import org.straddle.check.CheckRule;
import org.straddle.check.Tally;
import org.straddle.model.naming.Naming;
import org.straddle.publish.Audience;
import org.straddle.publish.NextRevision;
import org.straddle.publish.PreparedSheets;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.ui.folder.SaveEvent;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.work.FileWork;
import org.straddle.words.Catalogue;

/** Writes briefs, packing lists and the announcement into a folder, from the last finished computation. */
public final class PublishEvent {

    private static final Catalogue TEXTS = Catalogue.of(PublishEvent.class);

    private PublishEvent() {
    }

    public static void ask(Shell shell) {
        EventSession session = EventSession.current();
        if (session.computed().isEmpty() || session.computing()) {
            MessageDialog.openInformation(shell, TEXTS.text("publishEvent.title"), TEXTS.text("publishEvent.computing"));
            return;
        }
        Computed computed = session.computed().orElseThrow();
        Tally tally = Tally.of(computed.findings());
        if (tally.blockers() > 0 && MessageDialog.open(MessageDialog.WARNING, shell, TEXTS.text("publishEvent.title"),
                TEXTS.text("publishEvent.blockers", "tally", tally), SWT.NONE,
                TEXTS.text("publishEvent.dont"), TEXTS.text("publishEvent.anyway")) != 1) {
            return;
        }
        if (!frequenciesKnown(shell, computed)) {
            return;
        }
        PublishDialog dialog = new PublishDialog(shell, NextRevision.of(computed.outlook()),
                PublishedFolder.of(session.event(), session.folder().path()));
        if (dialog.open() == PublishDialog.OK) {
            PublishedFolder.remember(session.event(), dialog.folder());
            write(shell, computed, dialog.number(), dialog.folder());
        }
    }

    /** Chasers read the frequency first: what would be announced as not known is asked about by name. */
    private static boolean frequenciesKnown(Shell shell, Computed computed) {
        List<String> birds = computed.findings().stream().filter(finding -> finding.rule().equals(CheckRule.DOWNLINK_MISSING.id()))
                .map(finding -> Naming.name(finding.objects().get(0))).sorted().toList();
        return birds.isEmpty() || MessageDialog.open(MessageDialog.WARNING, shell, TEXTS.text("publishEvent.title"),
                TEXTS.text("publishEvent.frequencies", "birds", birds, "count", birds.size()), SWT.NONE,
                TEXTS.text("publishEvent.dont"), TEXTS.text("publishEvent.anyway")) == 1;
    }

    private static void write(Shell shell, Computed computed, int number, Path folder) {
        Instant now = Instant.now();
        NextRevision revision = NextRevision.of(computed.outlook()).numbered(number);
        if (revision.isNew() && EventSession.current().folder().isReadOnly()) {
            MessageDialog.openInformation(shell, TEXTS.text("publishEvent.title"), TEXTS.text("publishEvent.readonly", "number", number));
            return;
        }
        Publication[] publication = new Publication[1];
        PreparedSheets[] prepared = new PreparedSheets[1];
        if (!FileWork.run(shell, TEXTS.text("publishEvent.preparing"), () -> publication[0] = Publication.of(computed.outlook(),
                computed.findings(), new PublicationSettings(number, now)))
                || MessageDialog.open(MessageDialog.QUESTION, shell, TEXTS.text("publishEvent.title"), String.join("\n", publication[0].outline()),
                        SWT.NONE, TEXTS.text("publishEvent.publish", "number", number), TEXTS.text("publishEvent.cancel")) != 0
                || !FileWork.run(shell, TEXTS.text("publishEvent.preparing"), () -> prepared[0] = publication[0].prepare(folder))) {
            return;
        }
        try (PreparedSheets sheets = prepared[0]) {
            List<Path> files = new ArrayList<>();
            if (noted(shell, revision, now) && FileWork.run(shell, TEXTS.text("publishEvent.publishing"), () -> files.addAll(sheets.putInPlace()))) {
                told(shell, TEXTS.text("publishEvent.done", "files", files.size(), "folder", folder,
                        "number", number, "public", Audience.PUBLIC.folder(),
                        "private", Audience.PRIVATE.folder()), folder);
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
        MessageDialog.openError(shell, TEXTS.text("publishEvent.title"), TEXTS.text("publishEvent.failed",
                "revision", revision.number()));
        return false;
    }

    private static void told(Shell shell, String words, Path folder) {
        if (MessageDialog.open(MessageDialog.INFORMATION, shell,
                TEXTS.text("publishEvent.title"), words, SWT.NONE, TEXTS.text("publishEvent.show"),
                TEXTS.text("publishEvent.close")) == 0) {
            Program.launch(folder.toString());
        }
    }
}
