package org.straddle.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;

/** Synthetic ground whose skyline follows from geometry on paper. */
class TerrainHorizonTest {

    /** What a .prj file says of longitudes and latitudes on WGS 84 (OGC 01-009 well-known text). */
    private static final String WGS84 = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]";

    @TempDir
    Path folder;

    private static HorizonRequest at(double latitude, double longitude, double antennaM, double k, double farthestM) {
        return new HorizonRequest(new GeoPosition(latitude, longitude), antennaM, k, farthestM, false);
    }

    private static double towards(TerrainHorizon horizon, double azimuthDeg) {
        return horizon.skylineDeg().get((int) Math.round(azimuthDeg / TerrainHorizon.STEP_DEG));
    }

    private TerrainHorizon tiff(TinyTiff raster, HorizonRequest request) throws IOException {
        return TerrainHorizon.compute(List.of(raster.write(folder.resolve("dem.tif"))), request, null);
    }

    private Path grid(String name, int size, double west, double south, double cell, DoubleBinaryOperator metres)
            throws IOException {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT,
                "ncols %d%nnrows %d%nxllcorner %s%nyllcorner %s%ncellsize %s%nNODATA_value -9999%n", size, size, west, south, cell));
        for (int row = size - 1; row >= 0; row--) {
            for (int column = 0; column < size; column++) {
                text.append(metres.applyAsDouble(west + (column + 0.5) * cell, south + (row + 0.5) * cell)).append(' ');
            }
            text.append('\n');
        }
        Files.writeString(folder.resolve(name + ".prj"), WGS84);
        return Files.writeString(folder.resolve(name + ".asc"), text);
    }

    /**
     * A wall of 1000 m along a meridian east of the mark, seen from 2 m: on paper tan e = (H − h)/D − D(1 − k)/2R, with
     * R = 6388 km across the meridian at 50°N.
     */
    @ParameterizedTest
    @CsvSource({"0", "0.13", "0.25"})
    void aRidgeStandsWhereHandGeometryPutsIt(double k) throws IOException {
        TerrainHorizon seen = tiff(new TinyTiff(300, 100, 9.9, 50.1, 0.002).wgs84()
                .heights((x, y) -> x > 10.28 && x < 10.29 ? 1000 : 0), at(50, 10, 2, k, 21_000));
        double distance = Geodesic.distanceM(new GeoPosition(50, 10), new GeoPosition(50, 10.281));
        assertEquals(20_156, distance, 20, "of the middle of the first high cell");
        double tangent = 998 / distance - distance * (1 - k) / 2 / 6_388_000;
        // A step of half a cell, 72 m of 20 km, may meet the wall that much late.
        assertEquals(Math.toDegrees(Math.atan(tangent)), towards(seen, 90), 0.011);
        assertTrue(towards(seen, 270) < 0);
    }

    /** Dip of the horizon of a level plain, √(2h(1 − k)/R): from 100 m it is 0.321° without and 0.299° with refraction. */
    @ParameterizedTest
    @CsvSource({"0, 0.321", "0.13, 0.2995"})
    void aLevelPlainDips(double k, double dipDeg) throws IOException {
        TerrainHorizon seen = TerrainHorizon.compute(List.of(grid("plain", 240, -0.6, -0.6, 0.005, (x, y) -> 50)),
                at(0, 0, 100, k, 60_000), null);
        assertEquals(50, seen.groundM(), 1e-6);
        for (double elevation : seen.skylineDeg()) {
            assertEquals(-dipDeg, elevation, 0.002);
        }
        assertEquals(0, seen.unknownShare());
        assertTrue(seen.mask().points().size() <= 2, () -> seen.mask().toString());
    }

    /** In a funnel with sides of 1:10 the sky is free above atan 0.1 = 5.71°, all around, less the curvature. */
    @Test
    void aFunnelHidesTheSameAllAround() throws IOException {
        // 32627: UTM zone 27 north; 0.9996 is its scale on the central meridian, 21°W.
        double northing = 7_097_014;
        TerrainHorizon seen = tiff(new TinyTiff(400, 400, 500_000 - 4000, northing + 4000, 20).projected(32627)
                .heights((x, y) -> Math.min(300, 0.1 * Math.hypot(x - 500_000, y - northing))), at(64, -21, 0, 0, 3900));
        for (int azimuth = 0; azimuth < 360; azimuth += 15) {
            assertEquals(5.70, towards(seen, azimuth), 0.06);
        }
    }

    /**
     * A wall of 2000 m all along 89.0°N, from 89.8°N: 0.8° of meridian away, and 1.2° when one looks across the pole. A
     * degree of meridian is 111 694 m there, and the radius of curvature 6399.6 km (WGS 84).
     */
    @Test
    void acrossThePole() throws IOException {
        TerrainHorizon seen = tiff(new TinyTiff(900, 4, -180, 90, 0.4).wgs84()
                .heights((x, y) -> Math.abs(y - 89) < 0.1 ? 2000 : 0), at(89.8, 100, 0, 0, 140_000));
        assertEquals(onPaper(2000, 0.8 * 111_694, 6_399_600), towards(seen, 180), 0.002);
        assertEquals(onPaper(2000, 1.2 * 111_694, 6_399_600), towards(seen, 0), 0.002);
        assertEquals(0, seen.unknownShare());
    }

    private static double onPaper(double heightM, double distanceM, double radiusM) {
        return Math.toDegrees(Math.atan(heightM / distanceM - distanceM / 2 / radiusM));
    }

    @Test
    void acrossTheAntimeridianInOneFileOrTwo() throws IOException {
        double cell = 0.005;
        DoubleBinaryOperator wall = (x, y) -> Math.abs(Math.IEEEremainder(x - 180.1075, 360)) < 0.006 ? 800 : 0;
        HorizonRequest request = at(0, 179.95, 0, 0, 25_000);
        Path west = grid("e179", 200, 179, -0.5, cell, wall);
        Path east = grid("w180", 200, -180, -0.5, cell, wall);
        TerrainHorizon two = TerrainHorizon.compute(List.of(west, east), request, null);
        TerrainHorizon one = TerrainHorizon.compute(List.of(grid("both", 200, 179.5, -0.5, cell, wall)), request, null);
        double distance = 0.1525 * 111_319.49;
        assertEquals(onPaper(800, distance, 6_378_137), towards(two, 90), 0.03);
        assertEquals(towards(two, 90), towards(one, 90), 1e-9);
        assertEquals(0, two.unknownShare());
        TerrainHorizon blind = TerrainHorizon.compute(List.of(west), request, null);
        assertTrue(blind.unknownShare() > 0.2 && blind.remarks().get(0).contains("has no height"), () -> blind.remarks().toString());
    }

    @Test
    void theMaskIsNowhereLowerThanTheSkylineAndNotMuchHigher() throws IOException {
        java.util.Random random = new java.util.Random(3);
        double[] rough = new double[61 * 61];
        for (int i = 0; i < rough.length; i++) {
            rough[i] = random.nextDouble() * 700;
        }
        TerrainHorizon seen = TerrainHorizon.compute(List.of(grid("rough", 60, 10, 50, 0.01,
                (x, y) -> rough[(int) ((x - 10) * 100) * 61 + (int) ((y - 50) * 100)])), at(50.3, 10.3, 2, 0.13, 20_000), null);
        assertTrue(seen.mask().points().size() < seen.skylineDeg().size());
        for (int i = 0; i < seen.skylineDeg().size(); i++) {
            double above = seen.mask().elevationDegAt(i * TerrainHorizon.STEP_DEG) - seen.skylineDeg().get(i);
            assertTrue(above >= -1e-9 && above <= 2 * HorizonReduction.TOLERANCE_DEG + 0.01, above + "° at " + i);
        }
    }

    /** Fewer heights in memory: the highest of several cells stands for them, so the skyline may only rise. */
    @Test
    void pooledCellsLoseNoRidge() throws IOException {
        double cell = 0.001;
        Path file = new TinyTiff(1100, 200, 9.5, 50.1, cell).wgs84()
                .heights((x, y) -> x > 10.45 && x < 10.456 ? 500 : 10).write(folder.resolve("fine.tif"));
        HorizonRequest request = at(50, 9.55, 2, 0.13, 70_000);
        TerrainHorizon whole = TerrainHorizon.compute(List.of(file), request, null);
        TerrainHorizon pooled = TerrainHorizon.compute(List.of(file), request, 25_000, null);
        assertEquals(towards(whole, 90), towards(pooled, 90), 0.02);
        assertTrue(towards(pooled, 90) > 0.05);
        assertTrue(pooled.origin().contains("refraction k = 0.13"), pooled.origin());
        assertTrue(pooled.remarks().stream().anyMatch(remark -> remark.contains("3 × 3")), () -> pooled.remarks().toString());
    }

    /** 400 × 400 cells of half a metre and a look as far as 50 km: nothing is out there, and nobody waits for it. */
    @ParameterizedTest
    @CsvSource({"0.5", "0.01"})
    void fineRastersAndTinyCellsEndWhereTheyEnd(double cell) throws IOException {
        double northing = 7_097_014;
        TinyTiff raster = new TinyTiff(400, 400, 500_000 - 200 * cell, northing + 200 * cell, cell).projected(32627)
                .heights((x, y) -> x > 500_000 + 150 * cell ? 100 * cell : 0);
        TerrainHorizon seen = assertTimeoutPreemptively(Duration.ofSeconds(30), () -> tiff(raster, at(64, -21, 0, 0, 50_000)));
        assertEquals(Math.toDegrees(Math.atan(100 / 151.0)), towards(seen, 90), 0.3);
        assertTrue(seen.unknownShare() > 0.99);
    }

    /**
     * A wall one cell of a metre thick, so far away that the highest of 8 × 8 cells stands for all of them: never lower than
     * on paper, and higher at most by the stated 1.5 √2 thousandths of the tangent (and what a step may meet early).
     */
    @ParameterizedTest
    @CsvSource({"2500", "5000.5", "9000", "11400"})
    void growingStepsMeetAThinWallAndLiftItNoMoreThanStated(double distance) throws IOException {
        double northing = 7_097_014;
        TerrainHorizon seen = tiff(new TinyTiff(12_000, 60, 499_900, northing + 30, 1).projected(32627)
                .heights((x, y) -> Math.abs(x - 500_000 - distance) < 0.5001 ? 300 : 0), at(64, -21, 0, 0, 11_800));
        // 0.9996: the scale of UTM on its central meridian (and 6394 km the radius of curvature across it at 64°N).
        double onPaperDeg = onPaper(300, distance / 0.9996, 6_394_000);
        double tangent = Math.tan(Math.toRadians(onPaperDeg));
        assertTrue(towards(seen, 90) >= onPaperDeg - 0.002, towards(seen, 90) + " below " + onPaperDeg);
        assertTrue(towards(seen, 90) <= onPaperDeg + Math.toDegrees(1.5 * Math.sqrt(2) / 1000 * tangent) + 0.002,
                towards(seen, 90) + " above " + onPaperDeg);
    }

    /** Between two rasters there is nothing to look at; the ridge in the second is still met. */
    @Test
    void aRasterBehindAGapIsLookedAt() throws IOException {
        Path here = grid("here", 40, 9.95, 49.95, 0.0025, (x, y) -> 0);
        Path there = grid("there", 40, 10.25, 49.95, 0.0025, (x, y) -> x > 10.28 && x < 10.284 ? 1000 : 0);
        TerrainHorizon seen = TerrainHorizon.compute(List.of(here, there), at(50, 10, 0, 0, 40_000), null);
        double distance = Geodesic.distanceM(new GeoPosition(50, 10), new GeoPosition(50, 10.28125));
        assertEquals(onPaper(1000, distance, 6_388_000), towards(seen, 90), 0.03);
        Path utmHere = new TinyTiff(100, 100, 500_000 - 1000, 7_097_014 + 1000, 20).projected(32627).heights((x, y) -> 0)
                .write(folder.resolve("utm-here.tif"));
        Path utmThere = new TinyTiff(100, 100, 500_000 + 20_000, 7_097_014 + 1000, 20).projected(32627)
                .heights((x, y) -> x > 521_000 && x < 521_040 ? 1000 : 0).write(folder.resolve("utm-there.tif"));
        TerrainHorizon both = TerrainHorizon.compute(List.of(utmHere, utmThere), at(64, -21, 0, 0, 40_000), null);
        assertEquals(onPaper(1000, 21_010 / 0.9996, 6_394_000), towards(both, 90), 0.03);
    }

    @Test
    void voidsAreToldAndHideNoRidge() throws IOException {
        TerrainHorizon seen = TerrainHorizon.compute(List.of(grid("holes", 100, 10, 50, 0.005, (x, y) -> x > 10.35 ? -9999
                : x > 10.34 ? 600 : 0)), at(50.25, 10.25, 2, 0.13, 12_000), null);
        assertTrue(seen.unknownShare() > 0.05 && seen.unknownShare() < 0.5);
        assertTrue(towards(seen, 90) > 4, () -> "the ridge at the rim of the void: " + towards(seen, 90));
    }

    @Test
    void cancelStops() throws IOException {
        Path plain = grid("plain", 50, -0.5, -0.5, 0.02, (x, y) -> 0);
        NullProgressMonitor cancelled = new NullProgressMonitor();
        cancelled.setCanceled(true);
        assertThrows(OperationCanceledException.class,
                () -> TerrainHorizon.compute(List.of(plain), at(0, 0, 0, 0, 10_000), cancelled));
    }
}
