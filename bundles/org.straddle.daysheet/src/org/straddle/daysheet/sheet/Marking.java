package org.straddle.daysheet.sheet;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.check.Finding;
import org.straddle.check.Severity;

/**
 * The mark that stands for several findings: the gravest of those that nobody accepted, and how many are as grave.
 */
public record Marking(Severity severity, int count) {

    static final Comparator<Finding> GRAVEST_FIRST = Comparator.comparing(Finding::severity);

    /** Empty when there is nothing to mark. */
    public static Optional<Marking> of(Collection<Finding> findings) {
        List<Finding> open = findings.stream().filter(finding -> finding.accepted().isEmpty()).distinct().toList();
        return open.stream().map(Finding::severity).min(Comparator.naturalOrder()).map(gravest -> new Marking(gravest,
                (int) open.stream().filter(finding -> finding.severity() == gravest).count()));
    }
}
