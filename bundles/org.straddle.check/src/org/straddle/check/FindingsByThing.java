package org.straddle.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.straddle.model.Identified;

/**
 * What there is to say about each thing of an event. Every place that shows a thing (tree, day sheet, map, form) asks
 * here, so that all of them tell the same. Things are named by id, because findings are made on a copy of the event.
 */
public final class FindingsByThing {

    /** Before anything was checked. */
    public static final FindingsByThing NONE = of(List.of());

    private final Map<String, List<Finding>> byId = new HashMap<>();

    private FindingsByThing(List<Finding> findings) {
        for (Finding finding : findings) {
            Set<String> ids = new LinkedHashSet<>(finding.objects().stream().map(Identified::getId).toList());
            ids.forEach(id -> byId.computeIfAbsent(id, any -> new ArrayList<>()).add(finding));
        }
    }

    /** @param findings as {@code Checks} gives them, heaviest first; that order is kept */
    public static FindingsByThing of(List<Finding> findings) {
        return new FindingsByThing(findings);
    }

    /** All findings that name the thing, accepted ones too. */
    public List<Finding> about(String id) {
        return List.copyOf(byId.getOrDefault(id, List.of()));
    }

    /** The findings that name the thing and that nobody accepted. */
    public List<Finding> open(String id) {
        return byId.getOrDefault(id, List.of()).stream().filter(FindingsByThing::isOpen).toList();
    }

    /** The open findings that name any of the things, each once, such as those of a stop and its turns. */
    public List<Finding> open(Collection<? extends Identified> things) {
        return openAmong(things).toList();
    }

    /** What the mark on a picture of the things should show; empty when there is no open finding. */
    public Optional<Severity> gravest(Collection<? extends Identified> things) {
        return openAmong(things).map(Finding::severity).min(Comparator.naturalOrder());
    }

    private Stream<Finding> openAmong(Collection<? extends Identified> things) {
        return things.stream().flatMap(thing -> byId.getOrDefault(thing.getId(), List.of()).stream())
                .filter(FindingsByThing::isOpen).distinct();
    }

    private static boolean isOpen(Finding finding) {
        return finding.accepted().isEmpty();
    }
}
