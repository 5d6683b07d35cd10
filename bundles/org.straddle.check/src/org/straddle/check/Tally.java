package org.straddle.check;

import java.util.Collection;

import org.straddle.words.Catalogue;

/**
 * How many findings there are of each weight. Accepted findings are counted apart.
 *
 * @param blockers open blockers
 * @param warnings open warnings
 * @param advice   open advice
 * @param accepted findings of any weight that the coordinator accepted
 */
public record Tally(int blockers, int warnings, int advice, int accepted) {

    private static final Catalogue TEXTS = Catalogue.of(Tally.class);

    public static Tally of(Collection<Finding> findings) {
        return new Tally(open(findings, Severity.BLOCKER), open(findings, Severity.WARNING),
                open(findings, Severity.ADVICE),
                (int) findings.stream().filter(f -> f.accepted().isPresent()).count());
    }

    private static int open(Collection<Finding> findings, Severity severity) {
        return (int) findings.stream().filter(f -> f.severity() == severity && f.accepted().isEmpty()).count();
    }

    /** {@code 2 blockers, 1 warning, 0 pieces of advice, 3 accepted}. */
    @Override
    public String toString() {
        return TEXTS.text("tally", "blockers", blockers, "warnings", warnings, "advice", advice, "accepted", accepted);
    }
}
