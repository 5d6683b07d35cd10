package org.straddle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
import org.straddle.outlook.Outlook;
import org.straddle.publish.NextRevision;
import org.straddle.publish.PreparedSheets;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.publish.PublishException;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code publish EVENT}: a brief for each team and the announcement for chasers. */
@Command(name = "publish")
final class PublishCommand extends EventCommand {

    private static final Catalogue TEXTS = Catalogue.of(PublishCommand.class);

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private Path target;

    @Option(names = "--revision", paramLabel = "N")
    private Integer revision;

    @Option(names = "--dry-run")
    private boolean dryRun;

    @Override
    int work() throws Exception {
        opened.toChange(dryRun);
        Outlook outlook = opened.outlook(err());
        List<Finding> findings = Checks.standard().run(outlook, new ConsoleProgress(err()));
        NextRevision next = NextRevision.of(outlook);
        if (revision != null) {
            next.whyNot(revision).ifPresent(why -> {
                throw new WrongInput(why);
            });
        }
        NextRevision numbered = revision == null ? next : next.numbered(revision);
        Instant now = Instant.now().truncatedTo(ChronoUnit.MINUTES);
        Publication publication = Publication.of(outlook, findings, new PublicationSettings(numbered.number(), now));
        out().println(TEXTS.text("publishCommand.revisionIsnew", "numbered", numbered.number(), "isNew", numbered.isNew()));
        publication.outline().forEach(out()::println);
        if (dryRun) {
            out().println(TEXTS.text("publishCommand.nothingWritten"));
        } else {
            write(publication, numbered, now);
        }
        out().println(Blockers.summary(findings));
        out().println(Gates.of(outlook, findings).summary());
        return Blockers.exitCode(findings);
    }

    private void write(Publication publication, NextRevision revision, Instant now) throws IOException {
        try (PreparedSheets prepared = publication.prepare(target)) {
            if (revision.isNew()) {
                note(revision, now);
            }
            prepared.putInPlace().forEach(file -> out().println(file));
        }
    }

    private void note(NextRevision revision, Instant now) throws IOException {
        try {
            EventFolder folder = opened.toChange();
            Edit.execute(domain -> revision.record(domain, folder.event(), now));
            folder.save();
        } catch (EventFolderException e) {
            throw PublishException.notNoted(e);
        }
    }
}
