package org.straddle.cli;

import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.words.Catalogue;

/** How findings decide the exit code: an accepted blocker no longer blocks. */
final class Blockers {

    private static final Catalogue TEXTS = Catalogue.of(Blockers.class);

    private Blockers() {
    }

    static int exitCode(List<Finding> findings) {
        return open(findings, Severity.BLOCKER) > 0 ? StraddleCommand.BLOCKED : StraddleCommand.DONE;
    }

    static String summary(List<Finding> findings) {
        long accepted = findings.stream().filter(finding -> finding.accepted().isPresent()).count();
        return TEXTS.text("blockers.summary", "blockers", open(findings, Severity.BLOCKER),
                "warnings", open(findings, Severity.WARNING), "advice", open(findings, Severity.ADVICE), "accepted", accepted);
    }

    private static long open(List<Finding> findings, Severity severity) {
        return findings.stream().filter(f -> f.severity() == severity && f.accepted().isEmpty()).count();
    }
}
