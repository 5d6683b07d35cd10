package org.straddle.ui.session;

import java.util.List;
import java.util.Objects;

import org.straddle.check.Finding;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.outlook.Outlook;

/**
 * What the last finished background computation says. Its objects belong to the snapshot; their ids lead to the live
 * objects through {@link EventSession#live(String)}.
 */
public record Computed(Event snapshot, Outlook outlook, List<Finding> findings) {

    public Computed {
        Objects.requireNonNull(snapshot);
        Objects.requireNonNull(outlook);
        findings = List.copyOf(findings);
    }

    /** Findings that name the thing with this id, gravest first. */
    public List<Finding> about(String id) {
        return findings.stream().filter(finding -> finding.objects().stream().map(Identified::getId)
                .anyMatch(id::equals)).toList();
    }
}
