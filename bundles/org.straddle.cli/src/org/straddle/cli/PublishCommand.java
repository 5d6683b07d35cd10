package org.straddle.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.run.Checks;
import org.straddle.outlook.Outlook;
import org.straddle.publish.NextRevision;
import org.straddle.publish.Publication;
import org.straddle.publish.PublicationSettings;
import org.straddle.store.EventFolder;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code publish EVENT}: a brief for each team and the announcement for chasers. */
@Command(name = "publish")
final class PublishCommand extends EventCommand {

    @Option(names = "--out", paramLabel = "DIR", required = true)
    private Path target;

    @Option(names = "--revision", paramLabel = "N")
    private Integer revision;

    @Override
    int work() throws Exception {
        EventFolder folder = opened.toChange();
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
        publication.write(target).forEach(file -> out().println(file));
        if (numbered.isNew()) {
            Edit.execute(domain -> numbered.record(domain, folder.event(), now));
            folder.save();
        }
        out().println(Blockers.summary(findings));
        return Blockers.exitCode(findings);
    }
}
