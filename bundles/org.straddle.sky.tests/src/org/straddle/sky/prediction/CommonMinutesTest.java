package org.straddle.sky.prediction;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.sky.Horizon;
import org.straddle.sky.Invented;
import org.straddle.sky.Place;
import org.straddle.sky.Viewpoint;

/** A quality that says from where on it is full saves angles and changes nothing. */
class CommonMinutesTest {

    private static final double FULL_DEG = 12.5;

    private final Ephemeris ephemeris = Ephemeris.of(Invented.low("Auk", 800, 80, 20, 0), Invented.DAY, EarthOrientation.none(), null);
    private final Area area = area();

    private record Ramp(double fullDeg) implements CommonMinutes.Quality {
        @Override
        public double of(double elevationDeg, double leastDeg) {
            return elevationDeg <= leastDeg ? 0 : elevationDeg >= FULL_DEG ? 1 : 0.3 + 0.7 * (elevationDeg - leastDeg) / (FULL_DEG - leastDeg);
        }
    }

    private static Area area() {
        List<Place> places = new ArrayList<>();
        for (int latitude = 40; latitude < 70; latitude += 2) {
            for (int longitude = -30; longitude < 20; longitude += 4) {
                places.add(new Place(latitude, longitude, 0));
            }
        }
        double[] weights = new double[places.size()];
        Arrays.fill(weights, 1);
        return Area.of(places, weights);
    }

    private double[] minutes(CommonMinutes.Quality quality, double leastDeg) {
        return new CommonMinutes(ephemeris, area, leastDeg, quality).of(new Viewpoint(Invented.SKERRY, Horizon.flat(0)), 0, Invented.DAY);
    }

    @Test
    void sayingWhereQualityIsFullChangesNoBit() {
        for (double leastDeg : new double[] {0, 5, FULL_DEG, 20}) {
            double[] byEveryAngle = minutes(new Ramp(90), leastDeg);
            assertArrayEquals(byEveryAngle, minutes(new Ramp(FULL_DEG), leastDeg));
            assertTrue(Arrays.stream(byEveryAngle).sum() > 10, "nothing is seen above " + leastDeg);
        }
    }

    @Test
    void aWrongWordAboutItWouldShow() {
        assertTrue(Arrays.stream(minutes(new Ramp(6), 5)).sum() > Arrays.stream(minutes(new Ramp(FULL_DEG), 5)).sum() + 1);
    }
}
