package org.straddle.plan;

import java.time.LocalDate;
import java.util.Optional;

import org.straddle.grid.Presence;
import org.straddle.model.Event;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.SitesTaken;
import org.straddle.model.StraddleFactory;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.words.Catalogue;
import org.straddle.worth.SiteReadiness;

/** Whether teams may be sent to a site at all: its claim must be arguable, and no review may refuse it. */
public final class SiteUse {

    private static final Catalogue TEXTS = Catalogue.of(SiteUse.class);

    private SiteUse() {
    }

    /**
     * Chooses the sites for one search; the event keeps its own choice.
     *
     * @param snapshot a copy of the event
     */
    public static void take(SitesTaken sites, Event snapshot) {
        if (snapshot.getPolicies() == null) {
            snapshot.setPolicies(StraddleFactory.eINSTANCE.createPolicies());
        }
        snapshot.getPolicies().setSitesTaken(sites);
    }

    /** Why a team cannot use a site of the event, with the site's name; empty when it may be used. */
    public static Optional<String> whyNot(Outlook outlook, Site site) {
        return whyNot(outlook, site, Naming.name(site));
    }

    /** @param called what the site is called in the sentence */
    public static Optional<String> whyNot(Outlook outlook, Site site, String called) {
        if (!outlook.isPlaced(site)) {
            return Optional.of(TEXTS.text("siteUse.noPosition", "site", called));
        }
        Optional<Presence> presence = outlook.presence(site);
        if (presence.isEmpty()) {
            return Optional.of(TEXTS.text("siteUse.elsewhere", "site", called));
        }
        if (presence.get().least() < outlook.policies().leastPresence()) {
            return Optional.of(TEXTS.text("siteUse.doubtful", "site", called, "percent",
                    Math.floor(100 * presence.get().least())));
        }
        return isRefused(outlook, site, outlook.span().start().atZone(outlook.zone()).toLocalDate())
                || isRefused(outlook, site, outlook.span().end().atZone(outlook.zone()).toLocalDate())
                        ? Optional.of(TEXTS.text("siteUse.refused", "site", called)) : notReady(outlook, site, called);
    }

    /** When only ready sites may be used: a visit, a review and a permission must hold from the first day to the last. */
    private static Optional<String> notReady(Outlook outlook, Site site, String called) {
        Policies policies = outlook.event().getPolicies();
        boolean ready = policies == null || policies.getSitesTaken() != SitesTaken.ONLY_READY
                || SiteReadiness.of(site, outlook.span().start().atZone(outlook.zone()).toLocalDate(), policies).isReady()
                        && SiteReadiness.of(site, outlook.span().end().atZone(outlook.zone()).toLocalDate(), policies).isReady();
        return ready ? Optional.empty() : Optional.of(TEXTS.text("siteUse.notReady", "site", called));
    }

    private static boolean isRefused(Outlook outlook, Site site, LocalDate day) {
        return SafetyNotes.of(site, day, outlook.event().getPolicies()).state() instanceof ReviewState.Refused;
    }
}
