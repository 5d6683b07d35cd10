package org.straddle.sky.prediction;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.straddle.sky.Horizon;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.track.Sightline;

/**
 * For how many minutes one bird serves two ends at once, each moment weighted by how well the bird stands for the end
 * that has it worse. The one end is a place with a mask, the other the places of an {@link Area}.
 *
 * <p>Time is cut into slices of {@value #SLICE_S} s that begin at whole multiples of that from the beginning of the
 * prediction, and each counts as its middle, or as the middle of the part of it that is asked for. A bird in low orbit
 * moves by some 150 km in a slice, and rises by a degree or two.
 *
 * <p>What the far end sees is computed once and kept, because many places share it: make one object for one bird and
 * drop it afterwards. Not safe for use by many threads.
 */
public final class CommonMinutes {

    private static final double SLICE_S = 20;

    /** Of a sine; far more than arithmetic loses, far less than anybody sees. */
    private static final double ROUNDING = 1e-9;

    /** How well a bird stands. */
    @FunctionalInterface
    public interface Quality {

        /**
         * @param elevationDeg of the bird
         * @param leastDeg     elevation above which it can be worked there at all
         * @return 0 to 1; 0 at or below the least
         */
        double of(double elevationDeg, double leastDeg);

        /** Elevation from which on the quality is 1 wherever the bird can be worked at all, degrees. */
        default double fullDeg() {
            return 90;
        }
    }

    /** The places of the area that see the bird in one slice, and how well. */
    private record Seen(int[] places, float[] quality) {
    }

    private final Ephemeris ephemeris;
    private final Area there;
    private final double thereLeastDeg;
    private final Quality quality;
    private final Map<Integer, Seen> seen = new HashMap<>();
    private final double[] state = new double[6];

    /** @param thereLeastDeg elevation above which the bird can be worked from the area */
    public CommonMinutes(Ephemeris ephemeris, Area there, double thereLeastDeg, Quality quality) {
        this.ephemeris = ephemeris;
        this.there = there;
        this.thereLeastDeg = thereLeastDeg;
        this.quality = quality;
    }

    /**
     * Minutes of full quality, for each place of the area.
     *
     * @param hereLeastDeg elevation that the bird must stand above here, besides the mask
     * @param during       cut to the predicted time
     */
    public double[] of(Viewpoint here, double hereLeastDeg, Window during) {
        double[] minutes = new double[there.places().size()];
        Window predicted = during.intersection(ephemeris.window()).orElse(null);
        if (predicted == null || ephemeris.track().isEmpty()) {
            return minutes;
        }
        double from = Math.max(0, ephemeris.seconds(predicted.start()));
        double until = Math.min(ephemeris.track().lengthS(), ephemeris.seconds(predicted.end()));
        Sightline sight = new Sightline(here.place(), ephemeris.track());
        for (int slice = (int) Math.floor(from / SLICE_S); slice * SLICE_S < until; slice++) {
            double begin = Math.max(from, slice * SLICE_S);
            double end = Math.min(until, (slice + 1) * SLICE_S);
            double hereQuality = qualityHere(sight.at((begin + end) / 2), here.horizon(), hereLeastDeg);
            if (hereQuality > 0 && end > begin) {
                add(minutes, seen(slice), hereQuality, (end - begin) / 60);
            }
        }
        return minutes;
    }

    private double qualityHere(Sightline sight, Horizon horizon, double leastDeg) {
        double mask = horizon.elevationDegAt(Math.min(Math.toDegrees(sight.azimuth()), Math.nextDown(360.0)));
        return quality.of(Math.toDegrees(sight.elevation()), Math.max(leastDeg, mask));
    }

    private static void add(double[] minutes, Seen far, double hereQuality, double length) {
        for (int i = 0; i < far.places.length; i++) {
            minutes[far.places[i]] += length * Math.min(hereQuality, far.quality[i]);
        }
    }

    private Seen seen(int slice) {
        return seen.computeIfAbsent(slice, asked -> {
            double[] sines = new double[there.places().size()];
            ephemeris.track().state(Math.min((slice + 0.5) * SLICE_S, ephemeris.track().lengthS()), state);
            there.sinElevations(state, sines);
            double sinLeast = Math.sin(Math.toRadians(thereLeastDeg));
            // Angles are dear; far enough above the least for full quality none is needed.
            double sinFull = Math.max(sinLeast, Math.sin(Math.toRadians(Math.max(0, Math.min(90, quality.fullDeg()))))) + ROUNDING;
            int[] places = new int[sines.length];
            float[] qualities = new float[sines.length];
            int count = 0;
            for (int place = 0; place < sines.length; place++) {
                if (sines[place] > sinLeast) {
                    places[count] = place;
                    qualities[count++] = sines[place] > sinFull ? 1
                            : (float) quality.of(Math.toDegrees(Math.asin(Math.min(1, sines[place]))), thereLeastDeg);
                }
            }
            return new Seen(Arrays.copyOf(places, count), Arrays.copyOf(qualities, count));
        });
    }
}
