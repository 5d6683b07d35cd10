package org.straddle.safety;

import java.time.LocalDate;

import org.straddle.model.Policies;

/**
 * One use of a site, as far as cautions follow from it.
 *
 * @param day   local day of the event
 * @param light worst light while the team is there
 * @param spanM longest distance between two parts of the station, metres
 * @param countryClass of clothing that the rules of the country ask for; 0 where none was entered
 */
record Occasion(LocalDate day, Light light, double spanM, int countryClass) {

    /** In place of a span that makes no sense: longer than stations are, so that distances come out careful. */
    private static final double LONG_SPAN_M = 50;

    static Occasion of(LocalDate day, Light light, Policies policies, int countryClass) {
        double span = policies.getStationSpanM();
        return new Occasion(day, light, span >= 0 && Double.isFinite(span) ? span : LONG_SPAN_M, countryClass);
    }
}
