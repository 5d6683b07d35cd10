package org.straddle.plan;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.straddle.grid.Presence;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.SitesTaken;
import org.straddle.outlook.Outlook;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.worth.SiteReadiness;

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
                        ? Optional.of("was refused by a safety review") : notReady(outlook, site);
    }

    /** When only ready sites may be used: a visit, a review and a permission must hold from the first day to the last. */
    private static Optional<String> notReady(Outlook outlook, Site site) {
        Policies policies = outlook.event().getPolicies();
        boolean ready = policies == null || policies.getSitesTaken() != SitesTaken.ONLY_READY
                || SiteReadiness.of(site, outlook.span().start().atZone(outlook.zone()).toLocalDate(), policies).isReady()
                        && SiteReadiness.of(site, outlook.span().end().atZone(outlook.zone()).toLocalDate(), policies).isReady();
        return ready ? Optional.empty() : Optional.of("is not ready, and only ready sites may be used");
    }

    private static boolean isRefused(Outlook outlook, Site site, LocalDate day) {
        return SafetyNotes.of(site, day, outlook.event().getPolicies()).state() instanceof ReviewState.Refused;
    }
}
