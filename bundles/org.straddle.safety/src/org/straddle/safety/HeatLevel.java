package org.straddle.safety;

import org.straddle.words.Catalogue;

/**
 * What a heat index means for people at work outdoors. Published bounds disagree; these are those of the US National
 * Weather Service's chart as commonly printed: from 80, 90, 103 and 125 °F.
 */
public enum HeatLevel {
    NONE(Double.NEGATIVE_INFINITY),
    CAUTION(80),
    EXTREME_CAUTION(90),
    DANGER(103),
    EXTREME_DANGER(125);

    private static final Catalogue TEXTS = Catalogue.of(HeatLevel.class);

    private final double fromF;

    HeatLevel(double fromF) {
        this.fromF = fromF;
    }

    /** The level in plain words. */
    public String words() {
        return TEXTS.text(this);
    }

    /** @param heatIndexC °C, see {@link HeatIndex} */
    public static HeatLevel ofCelsius(double heatIndexC) {
        return of(Temperature.fahrenheit(heatIndexC));
    }

    /** @param heatIndexF °F, see {@link HeatIndex} */
    public static HeatLevel of(double heatIndexF) {
        HeatLevel level = NONE;
        for (HeatLevel candidate : values()) {
            if (heatIndexF >= candidate.fromF) {
                level = candidate;
            }
        }
        return level;
    }
}
