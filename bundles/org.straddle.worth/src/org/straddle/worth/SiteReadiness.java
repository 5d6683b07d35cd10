package org.straddle.worth;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;

import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.VisitState;
import org.straddle.words.Catalogue;

/**
 * What a site lacks on a day before a team may use it. Empty means ready; that is a state of papers, not of the place:
 * whoever is on the spot decides.
 */
public record SiteReadiness(Set<Lack> lacks) {

    /** What can be missing. */
    public enum Lack {
        /** Nobody visited it, or the visit no longer holds. */
        VISIT,
        /** No review holds. */
        REVIEW,
        /** The permission to be there ends before. */
        PERMISSION;

        private static final Catalogue TEXTS = Catalogue.of(SiteReadiness.class);

        /** What must be got: visit, review, permission. */
        public String word() {
            return TEXTS.text(this);
        }
    }

    public SiteReadiness {
        lacks = Set.copyOf(lacks);
    }

    /** @param policies null for the usual ones */
    public static SiteReadiness of(Site site, LocalDate day, Policies policies) {
        SafetyNotes notes = SafetyNotes.of(site, day, policies);
        EnumSet<Lack> lacks = EnumSet.noneOf(Lack.class);
        if (notes.visitState() != VisitState.HOLDS) {
            lacks.add(Lack.VISIT);
        }
        if (!notes.state().holds()) {
            lacks.add(Lack.REVIEW);
        }
        if (notes.permissionLapsed().isPresent()) {
            lacks.add(Lack.PERMISSION);
        }
        return new SiteReadiness(lacks);
    }

    public boolean isReady() {
        return lacks.isEmpty();
    }

    /** The chance that the site can be used, 0 to 1. */
    public double chance(WorthFigures figures) {
        return isReady() ? 1 : figures.unready();
    }
}
