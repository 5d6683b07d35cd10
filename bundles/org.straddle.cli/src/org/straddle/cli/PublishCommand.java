package org.straddle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.run.Checks;
import org.straddle.outlook.Outlook;
import org.straddle.publish.NextRevision;
import org.straddle.publish.PreparedSheets;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.publish.PublishException;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code publish EVENT}: a brief for each team and the announcement for chasers. */
@Command(name = "publish", description = { "Write one brief per team and one announcement for chasers, as HTML and plain text.",
    "Exit code 1 when blockers stand: they are printed on the briefs." })
final class PublishCommand extends EventCommand {

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write into: what is for everybody goes to its folder public, the rest to private.")
    private Path target;

    @Option(names = "--revision", paramLabel = "N", description = { "Number of this revision, printed on every sheet.",
        "Default: the next after the last one that was published, or the same when nothing changed." })
    private Integer revision;

    @Option(names = "--dry-run", description = "Tell what everybody would see, and write nothing.")
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
        out().println("Revision " + numbered.number() + (numbered.isNew() ? "." : ", which is published already; the schedule is the same."));
        publication.outline().forEach(out()::println);
        if (dryRun) {
            out().println("Nothing was written.");
        } else {
            write(publication, numbered, now);
        }
        out().println(Blockers.summary(findings));
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
