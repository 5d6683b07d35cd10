package org.straddle.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Cutting at a box, held against the intersection of JTS 1.20. */
class FrameTest {

    private static final Frame FRAME = new Frame(-20, -10, 300, 200);
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final Geometry BOX = JTS.toGeometry(new Envelope(-20, 300, -10, 200));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aRingKeepsTheAreaInside(long seed) {
        Random random = new Random(seed);
        int cut = 0;
        for (int k = 0; k < 50; k++) {
            double[] ring = star(random);
            double expected = JTS.createPolygon(points(ring)).intersection(BOX).getArea();
            double[] inside = FRAME.cutRing(ring);
            assertEquals(expected, area(inside), 1e-6 * Math.max(1, expected));
            for (int i = 0; i < inside.length; i += 2) {
                assertTrue(FRAME.grown(1e-9).contains(inside[i], inside[i + 1]), inside[i] + " " + inside[i + 1]);
            }
            cut += inside == ring || inside.length == 0 ? 0 : 1;
        }
        assertTrue(cut > 10, "rings that are cut: " + cut);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aLineKeepsItsLengthInside(long seed) {
        Random random = new Random(seed);
        double whole = 0;
        for (int k = 0; k < 50; k++) {
            double[] line = new double[2 * (2 + random.nextInt(12))];
            for (int i = 0; i < line.length; i++) {
                line[i] = random.nextDouble() * 600 - 150;
            }
            // Leg by leg: JTS counts once what a line goes along twice.
            double expected = 0;
            for (int i = 2; i < line.length; i += 2) {
                expected += JTS.createLineString(points(new double[] {line[i - 2], line[i - 1], line[i], line[i + 1]}))
                        .intersection(BOX).getLength();
            }
            assertEquals(expected, FRAME.cutLine(line).stream().mapToDouble(FrameTest::length).sum(), 1e-6);
            whole += expected;
        }
        assertTrue(whole > 1000, "px inside: " + whole);
    }

    @Test
    void whatIsInsideIsNotCopiedAndWhatIsOutsideIsGone() {
        double[] inside = {0, 0, 10, 0, 10, 10, 0, 0};
        assertSame(inside, FRAME.cutRing(inside));
        assertEquals(0, FRAME.cutRing(new double[] {400, 0, 500, 0, 500, 10, 400, 0}).length);
        assertEquals(List.of(), FRAME.cutLine(new double[] {400, 0, 500, 0, 500, 10}));
    }

    /** Points around a centre at distances by chance: it meets itself nowhere. */
    private static double[] star(Random random) {
        int corners = 3 + random.nextInt(40);
        double x = random.nextDouble() * 500 - 100;
        double y = random.nextDouble() * 400 - 100;
        double[] ring = new double[2 * corners + 2];
        for (int i = 0; i < corners; i++) {
            double away = 20 + random.nextDouble() * 150;
            ring[2 * i] = x + away * Math.cos(2 * Math.PI * i / corners);
            ring[2 * i + 1] = y + away * Math.sin(2 * Math.PI * i / corners);
        }
        ring[2 * corners] = ring[0];
        ring[2 * corners + 1] = ring[1];
        return ring;
    }

    private static Coordinate[] points(double[] line) {
        Coordinate[] points = new Coordinate[line.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = new CoordinateXY(line[2 * i], line[2 * i + 1]);
        }
        return points;
    }

    private static double area(double[] ring) {
        double sum = 0;
        for (int i = 2; i < ring.length; i += 2) {
            sum += ring[i - 2] * ring[i + 1] - ring[i] * ring[i - 1];
        }
        return Math.abs(sum) / 2;
    }

    private static double length(double[] line) {
        double sum = 0;
        for (int i = 2; i < line.length; i += 2) {
            sum += Math.hypot(line[i] - line[i - 2], line[i + 1] - line[i - 1]);
        }
        return sum;
    }
}
