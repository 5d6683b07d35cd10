package org.straddle.exchange.elements;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Units of the values that SGP4 takes: CCSDS 502.0-B-3, table 4-3. A message may write them down; most do not. */
final class OmmUnits {

    private static final Set<String> DEGREES = Set.of("deg");
    private static final Map<String, Set<String>> UNITS = Map.of("MEAN_MOTION", Set.of("rev/day", "rev/d"),
            "INCLINATION", DEGREES, "RA_OF_ASC_NODE", DEGREES, "ARG_OF_PERICENTER", DEGREES, "MEAN_ANOMALY", DEGREES,
            "BSTAR", Set.of("1/er"), "MEAN_MOTION_DOT", Set.of("rev/day**2", "rev/d**2"), "MEAN_MOTION_DDOT",
            Set.of("rev/day**3", "rev/d**3"));

    private OmmUnits() {
    }

    /** Can a unit follow the value? A name that ends in brackets is all name. */
    static boolean has(String keyword) {
        return UNITS.containsKey(keyword);
    }

    /** Is it a unit of the keyword, or is the keyword none that we use? */
    static boolean isRight(String keyword, String unit) {
        Set<String> right = UNITS.get(keyword);
        return right == null || right.contains(unit.toLowerCase(Locale.ROOT));
    }
}
