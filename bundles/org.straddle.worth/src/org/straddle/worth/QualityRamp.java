package org.straddle.worth;

import org.straddle.sky.prediction.CommonMinutes;

/**
 * What a minute counts by how high the bird stands: little just above the mask, in full from some elevation on, and in
 * between along a straight line. A choice of ours.
 *
 * @param low     just above the mask, 0 to 1
 * @param fullDeg elevation from which on a minute counts in full, degrees
 */
public record QualityRamp(double low, double fullDeg) implements CommonMinutes.Quality {

    @Override
    public double of(double elevationDeg, double leastDeg) {
        if (elevationDeg <= leastDeg) {
            return 0;
        }
        return elevationDeg >= fullDeg ? 1 : low + (1 - low) * (elevationDeg - leastDeg) / (fullDeg - leastDeg);
    }
}
