package org.straddle.kit.energy;

/**
 * What kinds of batteries give of what is printed on them.
 *
 * <p>Usable part: lead-acid 0.5, lithium iron phosphate 0.8 (0.8 to 0.9); from memory, as are those of the other kinds.
 * Cold: lead-acid loses 10 % at 10 °C and 16 % at 0 °C (manufacturer's FAQ, slow discharge), nothing at 20 °C; the other
 * kinds from memory, no source. Age: no source. A battery of which nobody wrote down the kind is taken as the worst in each.
 */
public enum CellType {
    LEAD_ACID(0.5, 0.010, 0.05), LITHIUM_IRON_PHOSPHATE(0.8, 0.012, 0.03), LITHIUM_ION(0.8, 0.012, 0.04),
    NICKEL_METAL_HYDRIDE(0.8, 0.015, 0.05), ALKALINE(0.5, 0.025, 0.05), UNKNOWN(0.5, 0.025, 0.05);

    private final double usable;
    /** Part lost for each degree below 20 °C. */
    private final double lostPerDegree;
    /** Part lost in each year. */
    private final double lostPerYear;

    CellType(double usable, double lostPerDegree, double lostPerYear) {
        this.usable = usable;
        this.lostPerDegree = lostPerDegree;
        this.lostPerYear = lostPerYear;
    }

    /** Part of what is printed on it that may be counted on, 0 to 1. */
    public double counted(double temperatureDegC, double ageYears) {
        double cold = Math.max(0, 1 - Math.max(0, 20 - temperatureDegC) * lostPerDegree);
        double old = Math.max(0, 1 - Math.max(0, ageYears) * lostPerYear);
        return usable * cold * old;
    }

    /** Part that may be drawn before it is called empty, 0 to 1, warm and new. */
    public double usable() {
        return usable;
    }
}
