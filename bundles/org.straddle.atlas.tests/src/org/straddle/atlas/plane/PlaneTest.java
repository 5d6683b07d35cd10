package org.straddle.atlas.plane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.geotools.api.parameter.ParameterValueGroup;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.MathTransformFactory;
import org.geotools.referencing.ReferencingFactoryFinder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;

class PlaneTest {

    private static final Spheroid BESSEL_1841 = new Spheroid(6_377_397.155, 299.1528128);

    /**
     * IOGP Publication 373-7-2 (EPSG Guidance Note 7-2), "Oblique Stereographic", method 9809, example Amersfoort / RD
     * New: latitude 53°N, longitude 6°E gives E 196105.283 m, N 557057.739 m. Values from memory.
     */
    @Test
    void obliqueAsInTheGuidanceNote() {
        GeoPosition origin = new GeoPosition(52 + 9 / 60.0 + 22.178 / 3600, 5 + 23 / 60.0 + 15.5 / 3600);
        Plane plane = new ObliqueStereographic(BESSEL_1841, origin, 0.9999079);
        PlanePoint point = plane.put(new GeoPosition(53, 6));
        assertEquals(196_105.283, point.x() + 155_000, 0.0006);
        assertEquals(557_057.739, point.y() + 463_000, 0.0006);
        GeoPosition back = plane.position(196_105.283 - 155_000, 557_057.739 - 463_000);
        assertEquals(53, back.latitudeDeg(), 1e-8);
        assertEquals(6, back.longitudeDeg(), 1e-8);
    }

    /**
     * The same publication, "Polar Stereographic (variant A)", method 9810, example WGS 84 / UPS North: latitude 73°N,
     * longitude 44°E gives E 3320416.75 m, N 632668.43 m. Values from memory.
     */
    @Test
    void polarAsInTheGuidanceNote() {
        Plane plane = new PolarStereographic(Spheroid.WGS84, true, 0, 0.994);
        PlanePoint point = plane.put(new GeoPosition(73, 44));
        assertEquals(3_320_416.75, point.x() + 2_000_000, 0.006);
        assertEquals(632_668.43, point.y() + 2_000_000, 0.006);
        GeoPosition back = plane.position(1_320_416.75, -1_367_331.57);
        assertEquals(73, back.latitudeDeg(), 1e-7);
        assertEquals(44, back.longitudeDeg(), 1e-7);
    }

    /**
     * The same publication, variant B, method 9829, example WGS 84 / Australian Antarctic Polar Stereographic: latitude
     * 75°S, longitude 120°E gives E 7255380.79 m, N 7053389.56 m, with the standard parallel 71°S in place of a scale at
     * the pole; k0 is that of the parallel. Values from memory.
     */
    @Test
    void southPolarAsInTheGuidanceNote() {
        Plane ofOne = new PolarStereographic(Spheroid.WGS84, false, 70, 1);
        double atPole = 1 / ofOne.scaleAt(new GeoPosition(-71, 70));
        PlanePoint point = new PolarStereographic(Spheroid.WGS84, false, 70, atPole).put(new GeoPosition(-75, 120));
        assertEquals(7_255_380.79, point.x() + 6_000_000, 0.006);
        assertEquals(7_053_389.56, point.y() + 6_000_000, 0.006);
    }

    /** GeoTools 33.1, Oblique_Stereographic, within 30° of the centre. */
    @ParameterizedTest
    @CsvSource({"65,-18.5", "-41.5,174", "0,0", "52,-179.9", "-70,179.5", "88.5,40"})
    void obliqueAsGeoToolsHasIt(double latitude, double longitude) throws Exception {
        MathTransform other = geoTools("Oblique_Stereographic", latitude, longitude);
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            GeoPosition place = Geodesic.destination(plane.centre(), 360 * random.nextDouble(), 3_300_000 * random.nextDouble());
            double[] theirs = new double[2];
            other.transform(new double[] {nearest(place.longitudeDeg(), longitude), place.latitudeDeg()}, 0, theirs, 0, 1);
            PlanePoint ours = plane.put(place);
            assertEquals(theirs[0], ours.x(), 0.01);
            assertEquals(theirs[1], ours.y(), 0.01);
        }
    }

    /** GeoTools 33.1, Polar_Stereographic. */
    @ParameterizedTest
    @CsvSource({"89.7,-18.5", "-90,120"})
    void polarAsGeoToolsHasIt(double latitude, double longitude) throws Exception {
        MathTransform other = geoTools("Polar_Stereographic", Math.copySign(90, latitude), longitude);
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            GeoPosition place = new GeoPosition(Math.copySign(90 - 50 * random.nextDouble(), latitude),
                    360 * random.nextDouble() - 180);
            double[] theirs = new double[2];
            other.transform(new double[] {nearest(place.longitudeDeg(), longitude), place.latitudeDeg()}, 0, theirs, 0, 1);
            PlanePoint ours = plane.put(place);
            assertEquals(theirs[0], ours.x(), 0.01);
            assertEquals(theirs[1], ours.y(), 0.01);
        }
    }

    private static double nearest(double longitude, double centre) {
        return centre + Math.IEEEremainder(longitude - centre, 360);
    }

    private static MathTransform geoTools(String method, double latitude, double longitude) throws Exception {
        MathTransformFactory factory = ReferencingFactoryFinder.getMathTransformFactory(null);
        ParameterValueGroup parameters = factory.getDefaultParameters(method);
        parameters.parameter("semi_major").setValue(6_378_137.0);
        parameters.parameter("semi_minor").setValue(6_378_137.0 * (1 - 1 / 298.257223563));
        parameters.parameter("latitude_of_origin").setValue(latitude);
        parameters.parameter("central_meridian").setValue(longitude);
        parameters.parameter("scale_factor").setValue(1.0);
        return factory.createParameterizedTransform(parameters);
    }

    /** There and back over the half of the Earth that a map shows, 180° and the poles included. */
    @ParameterizedTest
    @CsvSource({"65,-18.5", "-17,179.9", "0,-180", "89,10", "90,0", "-88.9,75", "-90,0"})
    void thereAndBack(double latitude, double longitude) {
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            GeoPosition place = Geodesic.destination(plane.centre(), 360 * random.nextDouble(),
                    9_990_000 * Math.sqrt(random.nextDouble()));
            PlanePoint point = plane.put(place);
            GeoPosition back = plane.position(point.x(), point.y());
            assertTrue(Geodesic.distanceM(place, back) < 0.001, () -> place + " comes back as " + back);
        }
    }

    @ParameterizedTest
    @CsvSource({"65,-18.5", "-17,179.9", "45,90", "-89.5,0"})
    void thePolesAndTheDateLineArePlacesLikeOthers(double latitude, double longitude) {
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        assertTrue(apart(plane, latitude, 179.9999999, latitude, -179.9999999) < 0.1);
        double pole = Math.copySign(90, latitude);
        assertTrue(apart(plane, pole, 12, pole - Math.copySign(1e-6, pole), -140) < 0.2);
    }

    /** The oblique plane joins imperfectly on the far side of the pole, a quarter of the Earth away. */
    @ParameterizedTest
    @CsvSource({"65,45,10", "45,45,50", "10,85,50"})
    void theSeamBeyondThePoleIsNarrow(double latitude, double seamLatitude, double km) {
        Plane plane = Plane.about(new GeoPosition(latitude, 0));
        assertTrue(apart(plane, seamLatitude, 179.9999999, seamLatitude, -179.9999999) < 1000 * km);
    }

    private static double apart(Plane plane, double latitude, double longitude, double otherLatitude, double otherLongitude) {
        PlanePoint one = plane.put(new GeoPosition(latitude, longitude));
        PlanePoint other = plane.put(new GeoPosition(otherLatitude, otherLongitude));
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    /** Conformal: a small step has the same length on the plane whichever way it goes, and right angles stay right. */
    @ParameterizedTest
    @CsvSource({"65,-18.5,63,-22", "65,-18.5,20,60", "-17,179.9,-20,-170", "89.5,0,80,120", "-85,30,-89.99,-100"})
    void keepsAngles(double latitude, double longitude, double there, double thereLongitude) {
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        GeoPosition place = new GeoPosition(there, thereLongitude);
        PlanePoint here = plane.put(place);
        double scale = plane.scaleAt(place);
        double[] bearings = new double[4];
        for (int i = 0; i < 4; i++) {
            PlanePoint step = plane.put(Geodesic.destination(place, 90 * i, 10));
            assertEquals(scale, Math.hypot(step.x() - here.x(), step.y() - here.y()) / 10, 1e-5 * scale);
            bearings[i] = Math.toDegrees(Math.atan2(step.x() - here.x(), step.y() - here.y()));
        }
        for (int i = 1; i < 4; i++) {
            assertEquals(90, Math.floorMod((long) Math.round(1e4 * (bearings[i] - bearings[i - 1])), 3_600_000L) / 1e4, 0.01);
        }
        assertEquals(0, Math.IEEEremainder(plane.northDeg(place) - bearings[0], 360), 0.01);
    }

    @Test
    void lengthsNearTheEventAreTrue() {
        Plane plane = Plane.about(new GeoPosition(65, -18.5));
        assertEquals(1, plane.scaleAt(plane.centre()), 1e-12);
        assertEquals(1, plane.scaleAt(new GeoPosition(63.4, -22)), 0.001);
        assertEquals(2, plane.scaleAt(Geodesic.destination(plane.centre(), 200, 10_000_000)), 0.02);
    }
}
