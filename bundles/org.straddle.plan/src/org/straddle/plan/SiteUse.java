package org.straddle.plan;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.straddle.grid.Presence;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;

/** Whether teams may be sent to a site at all: its claim must be arguable, and no review may refuse it. */
public final class SiteUse {

    private SiteUse() {
    }

    /** What keeps teams from a site of the event, to be read after its name; empty when it may be used. */
    public static Optional<String> whyNot(Outlook outlook, Site site) {
        if (!outlook.isPlaced(site)) {
            return Optional.of("has no position");
        }
        Optional<Presence> presence = outlook.presence(site);
        if (presence.isEmpty()) {
            return Optional.of("does not lie where the squares that it claims meet");
        }
        if (presence.get().least() < outlook.policies().leastPresence()) {
            return Optional.of(String.format(Locale.ROOT, "is in all its squares with a probability of %.0f %% only",
                    Math.floor(100 * presence.get().least())));
        }
        return isRefused(outlook, site, outlook.span().start().atZone(outlook.zone()).toLocalDate())
                || isRefused(outlook, site, outlook.span().end().atZone(outlook.zone()).toLocalDate())
                        ? Optional.of("was refused by a safety review") : Optional.empty();
    }

    private static boolean isRefused(Outlook outlook, Site site, LocalDate day) {
        return SafetyNotes.of(site, day, outlook.event().getPolicies()).state() instanceof ReviewState.Refused;
    }
}
