package org.straddle.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class GeodesicTest {

    private static GeoPosition at(double latitude, double longitude) {
        return new GeoPosition(latitude, longitude);
    }

    /** The example between two airports in the documentation of GeographicLib (class Geodesic). */
    @Test
    void exampleOfTheGeographicLibDocumentation() {
        Geodesic way = Geodesic.between(at(40.6, -73.8), at(51.6, -0.5));
        assertEquals(5551759.400319, way.distanceM(), 1e-6);
        assertEquals(51.198883, way.initialBearingDeg(), 1e-6);
        assertEquals(107.821777, way.finalBearingDeg(), 1e-6);
    }

    /** The first example of the GeodSolve(1) manual page: 003:18:29.9 177:29:09.2 15347628 m. */
    @Test
    void exampleOfTheGeodSolveManual() {
        Geodesic way = Geodesic.between(GeoPosition.parse("40:38:23N 073:46:44W"),
                GeoPosition.parse("01:21:33N 103:59:22E"));
        assertEquals(15347628, way.distanceM(), 0.5);
        assertEquals(3 + 18 / 60.0 + 29.9 / 3600, way.initialBearingDeg(), 0.05 / 3600 + 1e-9);
        assertEquals(177 + 29 / 60.0 + 9.2 / 3600, way.finalBearingDeg(), 0.05 / 3600 + 1e-9);
    }

    /**
     * Flinders Peak to Buninyong, the worked example for Vincenty's formulae in the technical manual of
     * the Geocentric Datum of Australia (coordinates from memory; distance and azimuths seen in several
     * public test suites). Its ellipsoid GRS80 differs from WGS-84 by 0.1 mm in the polar axis.
     */
    @Test
    void exampleOfTheAustralianDatumManual() {
        GeoPosition flinders = GeoPosition.parse("37°57'03.72030\"S 144°25'29.52440\"E");
        GeoPosition buninyong = GeoPosition.parse("37°39'10.15610\"S 143°55'35.38390\"E");
        Geodesic way = Geodesic.between(flinders, buninyong);
        assertEquals(54972.271, way.distanceM(), 1e-3);
        assertEquals(306 + 52 / 60.0 + 5.37 / 3600, way.initialBearingDeg(), 0.01 / 3600);
        assertEquals(127 + 10 / 60.0 + 25.07 / 3600, way.finalBearingDeg() - 180, 0.01 / 3600);
        GeoPosition arrived = Geodesic.destination(flinders, 306 + 52 / 60.0 + 5.37 / 3600, 54972.271);
        assertEquals(0, Geodesic.distanceM(arrived, buninyong), 2e-3);
    }

    /** Lengths of a degree at 42° north, computed from the WGS-84 radii of curvature, not by geodesics. */
    @Test
    void degreesAtFortyTwoNorth() {
        assertEquals(111073, Geodesic.distanceM(at(41.5, -72), at(42.5, -72)), 1);
        // The geodesic between two places 2° apart on a parallel is a little shorter than the parallel itself.
        double shortSteps = 0;
        for (int i = 0; i < 2000; i++) {
            shortSteps += Geodesic.distanceM(at(42, -72 + i / 1000.0), at(42, -72 + (i + 1) / 1000.0));
        }
        assertEquals(165702, shortSteps, 1);
        assertTrue(Geodesic.distanceM(at(42, -72), at(42, -70)) < 165702 - 1);
    }

    @Test
    void thereAndBack() {
        Random random = new Random(2);
        for (int i = 0; i < 1000; i++) {
            GeoPosition from = at(random.nextDouble() * 178 - 89, random.nextDouble() * 360 - 180);
            double bearing = random.nextDouble() * 360;
            double distance = random.nextDouble() * 1e6 + 1;
            Geodesic way = Geodesic.between(from, Geodesic.destination(from, bearing, distance));
            assertEquals(distance, way.distanceM(), 1e-6);
            assertEquals(0, Math.IEEEremainder(bearing - way.initialBearingDeg(), 360), 1e-6);
            assertTrue(way.initialBearingDeg() >= 0 && way.initialBearingDeg() < 360);
            assertEquals(0, Geodesic.distanceM(way.pointAt(distance), way.to()), 1e-6);
        }
    }

    @Test
    void edges() {
        assertEquals(0, Geodesic.distanceM(at(64, 180), at(64, -180)));
        assertEquals(0, Geodesic.distanceM(at(90, 20), at(90, -60)), 1e-6);
        assertEquals(0, Geodesic.initialBearingDeg(at(10, 20), at(11, 20)));
        assertEquals(180, Geodesic.initialBearingDeg(at(11, 20), at(10, 20)));
        assertEquals(0, Geodesic.bearing(-1e-17));
        assertEquals(359.5, Geodesic.bearing(-0.5));
        assertThrows(IllegalArgumentException.class, () -> Geodesic.destination(at(0, 0), Double.NaN, 1));
        assertThrows(IllegalArgumentException.class,
                () -> Geodesic.destination(at(0, 0), 0, Double.POSITIVE_INFINITY));
    }

    @Test
    void aRayGoesWhereTheDestinationIs() {
        GeoPosition start = new GeoPosition(64, 179.9);
        GeodesicRay ray = GeodesicRay.from(start, 77);
        for (double metres : new double[] {0, 1, 5000, 1_000_000}) {
            assertEquals(0, Geodesic.distanceM(Geodesic.destination(start, 77, metres), ray.pointAt(metres)), 1e-6);
        }
    }
}
