package org.straddle.ui.sky;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.straddle.check.Finding;
import org.straddle.model.Bird;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.PassKey;

/**
 * Which pass somebody means who selects a pass, a turn, a stop, a site, a bird or a finding. What the selection leaves
 * open stays as it was.
 */
final class Pointed {

    private final Outlook outlook;
    private final Optional<SitePass> now;

    private Pointed(Outlook outlook, Optional<SitePass> now) {
        this.outlook = outlook;
        this.now = now;
    }

    /** @param now the pass that is looked at */
    static Optional<PassKey> at(Object selected, Outlook outlook, Optional<SitePass> now) {
        return new Pointed(outlook, now).pass(selected).map(PassKey::of);
    }

    private Optional<SitePass> pass(Object selected) {
        if (selected instanceof Finding finding) {
            return Stream.of(Turn.class, Stop.class, Site.class, Bird.class)
                    .flatMap(kind -> finding.objects().stream().filter(kind::isInstance)).findFirst().flatMap(this::pass);
        } else if (selected instanceof Turn turn) {
            return turn(turn);
        } else if (selected instanceof Stop stop) {
            return stop(stop);
        } else if (selected instanceof Site site) {
            return nearest(site, now.map(SitePass::bird).orElse(null), time()).or(() -> nearest(site, null, time()));
        } else if (selected instanceof Bird bird) {
            return nearest(now.map(SitePass::site).orElse(null), bird, time()).or(() -> nearest(null, bird, time()));
        }
        SitePass found = Adapters.adapt(selected, SitePass.class);
        return found == null ? Optional.empty() : nearest(found.site(), found.bird(), found.pass().tca());
    }

    private Optional<SitePass> turn(Turn turn) {
        return turn.eContainer() instanceof Stop stop && stop.getSite() != null && turn.getBird() != null
                && turn.getStart() != null && turn.getEnd() != null
                        ? nearest(stop.getSite(), turn.getBird(), middle(turn)) : Optional.empty();
    }

    private Optional<SitePass> stop(Stop stop) {
        if (stop.getSite() == null) {
            return Optional.empty();
        }
        List<Turn> turns = stop.getTurns();
        return turns.isEmpty() ? nearest(stop.getSite(), null, stop.getArrival() == null ? time() : stop.getArrival())
                : turn(turns.get(0));
    }

    /** @param site or bird: null for any */
    private Optional<SitePass> nearest(Site site, Bird bird, Instant at) {
        return outlook.passes().stream().filter(found -> is(site, found.site()) && is(bird, found.bird()))
                .min(Comparator.comparing(found -> Duration.between(found.pass().tca(), at).abs()));
    }

    /** Selections hold live things or those of another snapshot; ids tell them. */
    private static boolean is(Identified wanted, Identified other) {
        return wanted == null || wanted.getId().equals(other.getId());
    }

    private Instant time() {
        return now.map(found -> found.pass().tca()).orElse(outlook.span().start());
    }

    private static Instant middle(Turn turn) {
        return turn.getStart().plus(Duration.between(turn.getStart(), turn.getEnd()).dividedBy(2));
    }
}
