package org.straddle.safety;

/**
 * What a heat index means for people at work outdoors. Published bounds disagree; these are those of the US National
 * Weather Service's chart as commonly printed: from 80, 90, 103 and 125 °F.
 */
public enum HeatLevel {
    NONE(Double.NEGATIVE_INFINITY, "no heat caution"),
    CAUTION(80, "caution: fatigue"),
    EXTREME_CAUTION(90, "extreme caution: cramps and exhaustion are possible"),
    DANGER(103, "danger: exhaustion is likely, heat stroke possible"),
    EXTREME_DANGER(125, "extreme danger: heat stroke is likely");

    private final double fromF;
    private final String words;

    HeatLevel(double fromF, String words) {
        this.fromF = fromF;
        this.words = words;
    }

    /** The level in plain words. */
    public String words() {
        return words;
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
