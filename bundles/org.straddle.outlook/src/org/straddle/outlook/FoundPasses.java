package org.straddle.outlook;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;
import java.util.Set;

import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.sky.Pass;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.prediction.PassTable;

/**
 * The passes of an event's birds over its sites, as a search found them. Lists are made when somebody asks: a search over
 * many sites finds more than anybody looks at.
 */
final class FoundPasses {

    /** Of an event that does not say when it is. */
    static final FoundPasses NONE = new FoundPasses(null, Map.of(), Map.of());

    private final PassTable table;
    private final Map<Site, Viewpoint> sites;
    private final Map<Bird, List<ElementSets.Reign>> birds;

    /** @param table may be null where there are no sites */
    FoundPasses(PassTable table, Map<Site, Viewpoint> sites, Map<Bird, List<ElementSets.Reign>> birds) {
        this.table = table;
        this.sites = sites;
        this.birds = birds;
    }

    Set<Site> sites() {
        return sites.keySet();
    }

    Set<Bird> birds() {
        return birds.keySet();
    }

    /** By time. */
    List<SitePass> of(Site site, Bird bird) {
        Viewpoint viewpoint = sites.get(site);
        List<ElementSets.Reign> reigns = birds.get(bird);
        return viewpoint == null || reigns == null ? List.of() : new SitePasses(site, bird, passes(viewpoint, reigns));
    }

    private List<Pass> passes(Viewpoint viewpoint, List<ElementSets.Reign> reigns) {
        if (reigns.size() == 1) {
            return table.passes(viewpoint, reigns.get(0).set());
        }
        List<Pass> passes = new ArrayList<>();
        new PassesByReign(reigns, reigns.stream().map(reign -> table.passes(viewpoint, reign.set()).iterator()).toList())
                .forEachRemaining(passes::add);
        return List.copyOf(passes);
    }

    /** Passes as those of one site and one bird. */
    private static final class SitePasses extends AbstractList<SitePass> implements RandomAccess {
        private final Site site;
        private final Bird bird;
        private final List<Pass> passes;

        SitePasses(Site site, Bird bird, List<Pass> passes) {
            this.site = site;
            this.bird = bird;
            this.passes = passes;
        }

        @Override
        public SitePass get(int index) {
            return new SitePass(site, bird, passes.get(index));
        }

        @Override
        public int size() {
            return passes.size();
        }
    }
}
