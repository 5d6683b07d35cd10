package org.straddle.ui.map;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;

/** Which pass somebody means who selects one, or a turn. */
final class Passes {

    private Passes() {
    }

    /** Empty for what is neither. */
    static Optional<SitePass> meant(Object selected, Outlook outlook) {
        if (selected instanceof Turn turn && turn.eContainer() instanceof Stop stop && stop.getSite() != null
                && turn.getBird() != null && turn.getStart() != null && turn.getEnd() != null) {
            Instant middle = turn.getStart().plus(Duration.between(turn.getStart(), turn.getEnd()).dividedBy(2));
            return nearest(outlook, stop.getSite(), turn.getBird(), middle);
        }
        SitePass pass = Adapters.adapt(selected, SitePass.class);
        return pass == null ? Optional.empty() : same(outlook, pass);
    }

    /** The same pass in another computation: element sets move it by seconds. */
    static Optional<SitePass> same(Outlook outlook, SitePass pass) {
        return nearest(outlook, pass.site(), pass.bird(), pass.pass().tca());
    }

    private static Optional<SitePass> nearest(Outlook outlook, Identified site, Identified bird, Instant at) {
        return outlook.passes().stream().filter(found -> found.site().getId().equals(site.getId())
                && found.bird().getId().equals(bird.getId()))
                .min(Comparator.comparing(found -> Duration.between(found.pass().tca(), at).abs()));
    }
}
