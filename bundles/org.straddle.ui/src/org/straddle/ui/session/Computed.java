package org.straddle.ui.session;

import java.util.List;
import java.util.Objects;

import org.straddle.check.Finding;
import org.straddle.check.FindingsByThing;
import org.straddle.check.gate.Gates;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;

/**
 * What the last finished background computation says. Its objects belong to the snapshot; their ids lead to the live
 * objects through {@link EventSession#live(String)}.
 *
 * @param byThing the same findings by the things that they name: what a view asks for the marks on what it shows
 * @param gates whether the teams may leave
 */
public record Computed(Event snapshot, Outlook outlook, List<Finding> findings, FindingsByThing byThing, Gates gates) {

    public Computed {
        Objects.requireNonNull(snapshot);
        Objects.requireNonNull(outlook);
        findings = List.copyOf(findings);
    }

    public Computed(Event snapshot, Outlook outlook, List<Finding> findings) {
        this(snapshot, outlook, findings, FindingsByThing.of(findings), Gates.of(outlook, findings));
    }

    /** Findings that name the thing with this id, gravest first, accepted ones too. */
    public List<Finding> about(String id) {
        return byThing.about(id);
    }
}
