package org.straddle.sky.prediction;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

import org.straddle.sky.Place;
import org.straddle.sky.track.LocalAxes;
import org.straddle.words.Catalogue;

/**
 * Ground where people live, as places spread over it, each with a weight: the part of the area it stands for.
 * A single place is an area too. Immutable; safe for use by many threads.
 */
public final class Area {

    private static final Catalogue TEXTS = Catalogue.of(Area.class);

    private static final int STRIDE = 6;
    /** Leaves room for rounding. */
    private static final double CLEARLY_LOWER = 1 - 1e-9;

    private final List<Place> places;
    private final double[] weights;
    private final double whole;
    /** Earth-fixed position (m) and up vector of each place. */
    private final double[] ground;
    private final int hash;

    private Area(List<Place> places, double[] weights) {
        this.places = places;
        this.weights = weights;
        this.whole = Arrays.stream(weights).sum();
        this.ground = new double[STRIDE * places.size()];
        for (int i = 0; i < places.size(); i++) {
            LocalAxes axes = new LocalAxes(places.get(i));
            System.arraycopy(axes.site, 0, ground, STRIDE * i, 3);
            System.arraycopy(axes.up, 0, ground, STRIDE * i + 3, 3);
        }
        this.hash = 31 * places.hashCode() + Arrays.hashCode(weights);
    }

    public static Area of(Place place) {
        return of(List.of(place), new double[] {1});
    }

    /**
     * @param places  at least one
     * @param weights one for each place, above 0; only their ratios count
     * @throws IllegalArgumentException when there is no place, or a weight is missing or not above 0
     */
    public static Area of(List<Place> places, double[] weights) {
        if (places.isEmpty() || places.size() != weights.length) {
            throw new IllegalArgumentException(TEXTS.text("area.areaNeedsPlaces", "places", places.size(),
                    "length", weights.length));
        }
        for (double weight : weights) {
            if (!(weight > 0 && weight <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException(TEXTS.text("area.weightAboveZero", "weight", weight));
            }
        }
        return new Area(List.copyOf(places), weights.clone());
    }

    /** The places that stand for the area. */
    public List<Place> places() {
        return places;
    }

    /** Areas with the same places and weights are equal: what was computed for one holds for the other. */
    @Override
    public boolean equals(Object other) {
        return other == this || other instanceof Area area && area.hash == hash && area.places.equals(places)
                && Arrays.equals(area.weights, weights);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** What part of the area one of the places stands for, 0 to 1. */
    public double part(int place) {
        return weights[place] / whole;
    }

    /** Part of the area that sees an Earth-fixed point above an elevation, 0 to 1; marks those places. */
    double partAbove(double[] point, double sinLeast, BitSet seen) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (sinElevation(point, i) > sinLeast) {
                sum += weights[i];
                seen.set(i);
            }
        }
        return sum / whole;
    }

    /** Does any place of the area see an Earth-fixed point above an elevation? */
    boolean isAnyAbove(double[] point, double sinLeast) {
        for (int i = 0; i < weights.length; i++) {
            if (sinElevation(point, i) > sinLeast) {
                return true;
            }
        }
        return false;
    }

    /** Sine of the elevation of an Earth-fixed point at the place of the area that sees it highest. */
    double highestSinElevation(double[] point) {
        double highest = -1;
        for (int i = 0; i < weights.length; i++) {
            int at = STRIDE * i;
            double dx = point[0] - ground[at];
            double dy = point[1] - ground[at + 1];
            double dz = point[2] - ground[at + 2];
            double up = dx * ground[at + 3] + dy * ground[at + 4] + dz * ground[at + 5];
            double square = dx * dx + dy * dy + dz * dz;
            // Most places see it clearly lower than the best so far, which is told without a root.
            if (highest > 0 && (up <= 0 || up * up < CLEARLY_LOWER * highest * highest * square)) {
                continue;
            }
            highest = Math.max(highest, up / Math.sqrt(square));
        }
        return highest;
    }

    /** Sine of the elevation of an Earth-fixed point at each place. */
    void sinElevations(double[] point, double[] sines) {
        for (int i = 0; i < sines.length; i++) {
            sines[i] = sinElevation(point, i);
        }
    }

    private double sinElevation(double[] point, int place) {
        int at = STRIDE * place;
        double dx = point[0] - ground[at];
        double dy = point[1] - ground[at + 1];
        double dz = point[2] - ground[at + 2];
        return (dx * ground[at + 3] + dy * ground[at + 4] + dz * ground[at + 5])
                / Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
