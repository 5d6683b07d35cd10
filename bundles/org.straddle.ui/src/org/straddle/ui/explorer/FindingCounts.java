package org.straddle.ui.explorer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Identified;

/** Findings that nobody has accepted, by the id of the things they name. */
final class FindingCounts {

    private final Map<String, List<Finding>> byId = new HashMap<>();

    void take(List<Finding> findings) {
        byId.clear();
        findings.stream().filter(finding -> finding.accepted().isEmpty()).forEach(finding -> finding.objects()
                .forEach(thing -> byId.computeIfAbsent(thing.getId(), id -> new ArrayList<>()).add(finding)));
    }

    int count(List<Identified> things) {
        return (int) about(things).count();
    }

    Optional<Severity> gravest(List<Identified> things) {
        return about(things).map(Finding::severity).min(Comparator.naturalOrder());
    }

    private Stream<Finding> about(List<Identified> things) {
        return things.stream().flatMap(thing -> byId.getOrDefault(thing.getId(), List.of()).stream()).distinct();
    }
}
