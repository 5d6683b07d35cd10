package org.straddle.kit.energy;

/**
 * A battery in use; spares are not given here, because they do not count.
 *
 * @param printedWh what it stores when new, Wh, 0 or more
 * @param ageYears  0 or more
 */
public record Battery(String name, double printedWh, CellType type, double ageYears) {

    /**
     * @param most part of what is printed that the event allows to count on at most, 0 to 1
     * @return energy that may be counted on, Wh
     */
    public double countedWh(double temperatureDegC, double most) {
        double part = type.counted(temperatureDegC, ageYears);
        return Math.max(0, printedWh) * Math.min(part, most * part / type.usable());
    }
}
