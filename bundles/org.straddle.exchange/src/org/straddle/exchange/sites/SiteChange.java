package org.straddle.exchange.sites;

import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.model.Site;

/** What one line of a table would do to the event. */
public sealed interface SiteChange {

    /** Of the file, from 1. */
    int line();

    /** Of the site, as the event will call it; empty when a refused line gives none. */
    String name();

    /**
     * One thing that a line says of a site.
     *
     * @param was    as the event has it, in words; empty for a new site
     * @param now    as it will be, in words
     * @param values what is set
     */
    record Detail(SiteField field, String was, String now, Map<EStructuralFeature, Object> values) {
    }

    /**
     * A site that the event does not have.
     *
     * @param site    as it will be added
     * @param details what the line says, and what follows from it
     */
    record New(int line, Site site, List<Detail> details) implements SiteChange {
        @Override
        public String name() {
            return site.getName();
        }
    }

    /** A site of the event that is said to be otherwise. */
    record Changed(int line, String name, Site site, List<Detail> details) implements SiteChange {
    }

    /** A site that is as the line says. */
    record Unchanged(int line, Site site) implements SiteChange {
        @Override
        public String name() {
            return site.getName() == null ? "" : site.getName();
        }
    }

    /**
     * A line that cannot be taken.
     *
     * @param reason      a clause without a full stop
     * @param fitsSwapped would the position be on Earth if latitude and longitude changed places?
     */
    record Refused(int line, String name, String reason, boolean fitsSwapped) implements SiteChange {
    }
}
