package org.straddle.outlook;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.SubMonitor;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.sky.prediction.PassTable;
import org.straddle.words.Catalogue;

/** Finds the passes of an event's birds over its sites, each with the element set nearest in epoch. */
final class EventPasses {

    private static final Catalogue TEXTS = Catalogue.of(EventPasses.class);

    private final PassSearch search;
    private final Window span;
    private final Consumer<Trouble> troubles;
    /** Until when each set predicts: asked again of the very same sets, whose comparison takes long. */
    private final Map<ElementSet, Optional<Instant>> ends = new IdentityHashMap<>();

    EventPasses(PassSearch search, Window span, Consumer<Trouble> troubles) {
        this.search = search;
        this.span = span;
        this.troubles = troubles;
    }

    /**
     * @param birds on return without the element sets that say nothing about the span: the next nearest
     *              of the same bird takes their place
     */
    FoundPasses find(Map<Site, Viewpoint> sites, Map<Bird, ElementSets> birds,
            SubMonitor progress) {
        PassTable table = search(sites, birds, progress);
        Map<Bird, List<ElementSets.Reign>> reigns = new LinkedHashMap<>();
        birds.forEach((bird, sets) -> reigns.put(bird, sets.reigns(span)));
        reigns.forEach(this::tellDecay);
        return new FoundPasses(table, sites, reigns);
    }

    /**
     * The same passes for somebody who takes them one by one: where the birds are is computed now, a pass when a walk comes
     * to it.
     *
     * @param birds on return as after {@link #find}
     */
    PassWalks prepare(Map<Bird, ElementSets> birds, SubMonitor progress) {
        Map<ElementSet, Ephemeris> ephemerides = settled(birds, sets -> {
            progress.setWorkRemaining(100);
            return search.ephemerides(sets, span, progress.split(90));
        });
        Map<Bird, List<ElementSets.Reign>> reigns = new LinkedHashMap<>();
        birds.forEach((bird, sets) -> reigns.put(bird, sets.reigns(span)));
        reigns.forEach(this::tellDecay);
        return new PassWalks(reigns, ephemerides);
    }

    private PassTable search(Map<Site, Viewpoint> sites, Map<Bird, ElementSets> birds, SubMonitor progress) {
        return settled(birds, sets -> {
            progress.setWorkRemaining(100);
            return search.find(span, sets, sites.values(), progress.split(90));
        });
    }

    /** Searches with the element sets that are needed, anew without those that turn out to say nothing about the span. */
    private <T> T settled(Map<Bird, ElementSets> birds, Function<Set<ElementSet>, T> searched) {
        while (true) {
            Set<ElementSet> needed = new LinkedHashSet<>();
            birds.values().forEach(sets -> sets.reigns(span).forEach(reign -> needed.add(reign.set())));
            T answer = searched.apply(needed);
            Set<ElementSet> useless = needed.stream()
                    .filter(set -> end(set).filter(end -> !end.isAfter(span.start())).isPresent())
                    .collect(Collectors.toSet());
            if (useless.isEmpty()) {
                return answer;
            }
            birds.replaceAll((bird, sets) -> without(useless, bird, sets));
        }
    }

    private ElementSets without(Set<ElementSet> useless, Bird bird, ElementSets sets) {
        sets.reigns(span).stream().map(ElementSets.Reign::set).distinct().filter(useless::contains)
                .forEach(set -> tell(bird, TEXTS.text("eventPasses.elementSetSays", "bird", Called.of(bird),
                        "epoch", set.epoch().truncatedTo(ChronoUnit.SECONDS), "reason", reason(set))));
        return sets.without(useless);
    }

    private void tellDecay(Bird bird, List<ElementSets.Reign> reigns) {
        for (ElementSets.Reign reign : reigns) {
            Optional<Instant> end = end(reign.set()).filter(reign.window().end()::isAfter);
            if (end.isPresent()) {
                tell(bird, TEXTS.text("eventPasses.therePredictionAfter", "bird", Called.of(bird),
                        "epoch", end.get().truncatedTo(ChronoUnit.SECONDS), "reason", reason(reign.set())));
                return;
            }
        }
    }

    private Optional<Instant> end(ElementSet set) {
        return ends.computeIfAbsent(set, any -> search.ephemeris(set, span, null).predictionEnd());
    }

    private String reason(ElementSet set) {
        return search.ephemeris(set, span, null).predictionEndReason().orElse(TEXTS.text("eventPasses.reasonKnown"))
                .replaceFirst("\\.$", "");
    }

    private void tell(Bird bird, String sentence) {
        troubles.accept(new Trouble(Trouble.Kind.ELEMENTS_UNUSABLE, bird, sentence));
    }
}
