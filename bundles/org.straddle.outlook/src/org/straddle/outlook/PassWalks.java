package org.straddle.outlook;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.sky.ElementSet;
import org.straddle.sky.Pass;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.prediction.Ephemeris;

/** Ways through the passes of an event that find each pass when they come to it, and keep none. */
final class PassWalks {

    private final Map<Bird, List<ElementSets.Reign>> reigns;
    private final Map<ElementSet, Ephemeris> ephemerides;

    PassWalks(Map<Bird, List<ElementSets.Reign>> reigns, Map<ElementSet, Ephemeris> ephemerides) {
        this.reigns = reigns;
        this.ephemerides = ephemerides;
    }

    /** A walk for each of some birds, each by time. */
    Stream<Iterator<SitePass>> over(Site site, Viewpoint viewpoint, Predicate<Bird> birds) {
        Map<Bird, List<ElementSets.Reign>> asked = new LinkedHashMap<>(reigns);
        asked.keySet().removeIf(birds.negate());
        Iterator<Iterator<Pass>> walks = Ephemeris.walks(viewpoint, asked.values().stream().flatMap(List::stream)
                .map(reign -> ephemerides.get(reign.set())).toList()).iterator();
        List<Iterator<SitePass>> found = new ArrayList<>();
        asked.forEach((bird, rule) -> {
            List<Iterator<Pass>> ofBird = new ArrayList<>();
            rule.forEach(reign -> ofBird.add(walks.next()));
            found.add(new Walk(site, bird, rule.size() == 1 ? ofBird.get(0) : new PassesByReign(rule, ofBird)));
        });
        return found.stream();
    }

    private record Walk(Site site, Bird bird, Iterator<Pass> passes) implements Iterator<SitePass> {
        @Override
        public boolean hasNext() {
            return passes.hasNext();
        }

        @Override
        public SitePass next() {
            return new SitePass(site, bird, passes.next());
        }
    }
}
