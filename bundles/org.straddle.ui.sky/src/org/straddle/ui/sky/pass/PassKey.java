package org.straddle.ui.sky.pass;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;

/**
 * Which pass is meant, through every recomputation: element sets move a pass by seconds or minutes, and it stays the
 * same pass.
 *
 * @param at an instant in it, TCA where that is known
 */
public record PassKey(String siteId, String birdId, Instant at) {

    public static PassKey of(SitePass found) {
        return new PassKey(found.site().getId(), found.bird().getId(), found.pass().tca());
    }

    /** The pass of that site and bird whose time is nearest. */
    public Optional<SitePass> in(Outlook outlook) {
        return candidates(outlook).stream().min(Comparator.comparing(this::distance));
    }

    /** All passes of that bird over that site. */
    public List<SitePass> candidates(Outlook outlook) {
        return outlook.passes().stream().filter(found -> found.site().getId().equals(siteId)
                && found.bird().getId().equals(birdId)).toList();
    }

    private Duration distance(SitePass found) {
        return found.pass().window().contains(at) ? Duration.ZERO : Duration.between(at, found.pass().tca()).abs();
    }
}
