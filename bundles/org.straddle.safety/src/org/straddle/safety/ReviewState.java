package org.straddle.safety;

import java.time.LocalDate;

/** What the reviews of a site amount to on one day. Only {@link Valid} lets a team use the site. */
public sealed interface ReviewState {

    /** One or two words, for a label beside an icon. */
    String word();

    /** What it means and what to do, a plain sentence or two. */
    String sentence();

    /** Does a review hold on the day? */
    default boolean holds() {
        return this instanceof Valid;
    }

    /** Nobody signed a review dated on the day or before it. */
    record Missing(LocalDate day) implements ReviewState {
        @Override
        public String word() {
            return "missing";
        }

        @Override
        public String sentence() {
            return "Nobody signed a review of this site by " + day + ". Review its hazards before a team goes there.";
        }
    }

    /**
     * A review holds.
     *
     * @param until the last day on which it does
     * @param conditions what it asks for, empty when it asks for nothing
     */
    record Valid(String reviewer, LocalDate reviewed, LocalDate until, String conditions) implements ReviewState {
        @Override
        public String word() {
            return conditions.isEmpty() ? "valid" : "valid on conditions";
        }

        @Override
        public String sentence() {
            return "Reviewed by " + reviewer + " on " + reviewed + "; holds until " + until + "."
                    + (conditions.isEmpty() ? "" : " Conditions: " + conditions);
        }
    }

    /**
     * A review held and no longer does.
     *
     * @param since the first day on which it did not hold any more
     */
    record Expired(String reviewer, LocalDate since) implements ReviewState {
        @Override
        public String word() {
            return "expired";
        }

        @Override
        public String sentence() {
            return "The review by " + reviewer + " has not held since " + since + ". Look again and sign a new one.";
        }
    }

    /** The newest review says that the site must not be used; that does not lapse. */
    record Refused(String reviewer, String conditions) implements ReviewState {
        @Override
        public String word() {
            return "refused";
        }

        @Override
        public String sentence() {
            return "Do not use this site, says " + reviewer + "." + (conditions.isEmpty() ? "" : " " + conditions);
        }
    }

    /**
     * Somebody surveyed the site after the survey that was reviewed.
     *
     * @param surveyed day of the newer survey; null when that survey has no date
     */
    record Outdated(String reviewer, LocalDate surveyed) implements ReviewState {
        @Override
        public String word() {
            return "outdated";
        }

        @Override
        public String sentence() {
            return "The review by " + reviewer + " does not know the newer survey"
                    + (surveyed == null ? "" : " of " + surveyed) + ". Review that one.";
        }
    }
}
