package org.straddle.cli;

import java.util.List;

import org.straddle.check.Finding;
import org.straddle.check.Tally;

/** How findings decide the exit code: an accepted blocker no longer blocks. */
final class Blockers {

    private Blockers() {
    }

    static int exitCode(List<Finding> findings) {
        return Tally.of(findings).blockers() > 0 ? StraddleCommand.BLOCKED : StraddleCommand.DONE;
    }

    static String summary(List<Finding> findings) {
        return Tally.of(findings).toString();
    }
}
