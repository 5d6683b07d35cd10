package org.straddle.atlas.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.atlas.plane.Outline;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.plane.Projector;
import org.straddle.grid.GeoPosition;

class BaseMapTest {

    private static BaseMap map;

    @BeforeAll
    static void load() throws IOException {
        map = BaseMap.load(null);
    }

    @Test
    void holdsTheWholeEarth() {
        assertTrue(map.land().size() > 3000);
        assertTrue(map.borders().size() > 200);
        assertTrue(map.states().size() > 50);
        assertEquals(-180, map.land().getBounds().getMinX(), 0.01);
        assertEquals(83.6, map.land().getBounds().getMaxY(), 0.1);
    }

    /**
     * Places known to be on land or at sea, far from any coast, seen from centres all over the Earth: the place opposite
     * to some of them is land, where inside and outside of a ring change places. Any atlas.
     */
    @ParameterizedTest
    @CsvSource({"65,-18.5", "-17,179.9", "0,0", "89.5,0", "-89.5,0", "40,-100", "-35,80", "-60,70", "30,-75", "50,10"})
    void landIsWhereLandIs(double latitude, double longitude) {
        LaidBaseMap laid = LaidBaseMap.of(map, new Projector(Plane.about(new GeoPosition(latitude, longitude))));
        Plane plane = Plane.about(new GeoPosition(latitude, longitude));
        double[][] land = {{65, -19}, {72, -40}, {62, 100}, {40, -100}, {-25, 134}, {-10, -55}, {0, 25}, {-80, 60},
            {-80, -100}, {52, 20}, {-90, 0}};
        double[][] sea = {{30, -45}, {0, -150}, {-30, 80}, {85, 30}, {-60, -20}, {-45, -120}, {20, 165}, {90, 0}, {0, -25},
            {-62, 150}};
        int seen = 0;
        for (double[] place : land) {
            seen += check(plane, laid, place, true);
        }
        for (double[] place : sea) {
            seen += check(plane, laid, place, false);
        }
        assertTrue(seen >= 5, "half of the Earth holds some of the places");
    }

    private static int check(Plane plane, LaidBaseMap laid, double[] place, boolean land) {
        PlanePoint at = plane.put(new GeoPosition(place[0], place[1]));
        if (!(Math.hypot(at.x(), at.y()) < 0.98 * plane.rimM())) {
            return 0;
        }
        boolean inside = false;
        for (Outline ring : laid.land().full()) {
            for (double[] part : ring.parts()) {
                inside ^= surrounds(part, at);
            }
        }
        assertEquals(land, inside, () -> Arrays.toString(place));
        return 1;
    }

    private static boolean surrounds(double[] ring, PlanePoint at) {
        boolean inside = false;
        for (int i = 2; i < ring.length; i += 2) {
            if (ring[i - 1] > at.y() != ring[i + 1] > at.y() && at.x() < ring[i - 2]
                    + (at.y() - ring[i - 1]) / (ring[i + 1] - ring[i - 1]) * (ring[i] - ring[i - 2])) {
                inside = !inside;
            }
        }
        return inside;
    }

    @Test
    void aDamagedFileIsRefused() throws IOException {
        byte[] whole;
        try (InputStream in = new GZIPInputStream(BaseMap.class.getResourceAsStream("basemap.bin.gz"))) {
            whole = in.readAllBytes();
        }
        assertThrows(IOException.class, () -> BaseMap.read(packed(Arrays.copyOf(whole, whole.length / 2)), null));
        assertThrows(IOException.class, () -> BaseMap.read(packed("no map".getBytes()), null));
        assertThrows(IOException.class, () -> BaseMap.read(new ByteArrayInputStream(new byte[] {1, 2, 3}), null));
    }

    @Test
    void loadingStops() {
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> BaseMap.load(monitor));
    }

    private static InputStream packed(byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(content);
        }
        return new ByteArrayInputStream(out.toByteArray());
    }
}
