package org.straddle.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;

/** Every file that cannot be used gets a sentence that says why, and nothing hangs. */
class BadRasterTest {

    private static final String HEAD = "ncols 3\nnrows 2\nxllcorner 9\nyllcorner 49\ncellsize 1\n";
    private static final String WGS84 = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]]";

    @TempDir
    Path folder;

    private static HorizonRequest request(boolean takeForWgs84) {
        return new HorizonRequest(new GeoPosition(50, 10), 2, 0.13, 20_000, takeForWgs84);
    }

    private static String refusal(Path file, boolean takeForWgs84) {
        return assertTimeoutPreemptively(Duration.ofSeconds(60), () -> assertThrows(TerrainException.class,
                () -> TerrainHorizon.compute(List.of(file), request(takeForWgs84), null)).getMessage());
    }

    private void refused(String expected, byte[] content) throws IOException {
        String message = refusal(Files.write(folder.resolve("bad"), content), false);
        assertTrue(message.contains(expected) && message.contains("\n"), message);
    }

    @Test
    void aRasterWithoutACoordinateReferenceSystem() throws IOException {
        Path grid = Files.writeString(folder.resolve("bare.asc"), HEAD + "1 2 3 4 5 6\n");
        assertTrue(refusal(grid, false).contains("does not say its coordinate reference system"));
        assertTrue(refusal(grid, false).contains(".prj"));
        Path tiff = new TinyTiff(20, 20, 9, 51, 0.1).write(folder.resolve("bare.tif"));
        assertTrue(refusal(tiff, false).contains("does not say its coordinate reference system"));
    }

    @Test
    void theUserMaySayThatItIsWgs84() throws IOException {
        Path grid = Files.writeString(folder.resolve("bare.asc"), HEAD + "10 10 10 10 10 10\n");
        assertEquals(10, TerrainHorizon.compute(List.of(grid), request(true), null).groundM());
        Path tiff = new TinyTiff(20, 20, 9, 51, 0.1).heights((x, y) -> 7).write(folder.resolve("bare.tif"));
        assertEquals(7, TerrainHorizon.compute(List.of(tiff), request(true), null).groundM());
        Path metres = Files.writeString(folder.resolve("metres.asc"), HEAD.replace("xllcorner 9", "xllcorner 500000")
                + "1 2 3 4 5 6\n");
        assertTrue(refusal(metres, true).contains("are no degrees"));
    }

    /** Many sources put one beside each raster, also where the raster says its system itself. */
    @Test
    void aPrjFileBesideAGeoTiff() throws IOException {
        for (boolean inside : new boolean[] {true, false}) {
            TinyTiff raster = new TinyTiff(20, 20, 9, 51, 0.1).heights((x, y) -> 7);
            Path tiff = (inside ? raster.wgs84() : raster).write(folder.resolve("beside" + inside + ".tif"));
            Path prj = Files.writeString(folder.resolve("beside" + inside + ".prj"), WGS84);
            assertEquals(7, TerrainHorizon.compute(List.of(tiff), request(false), null).groundM());
            Files.writeString(prj, "GEOGCS[\"WGS 84\"");
            if (inside) {
                assertEquals(7, TerrainHorizon.compute(List.of(tiff), request(false), null).groundM(), "what the raster says counts");
            } else {
                assertTrue(refusal(tiff, false).startsWith("besidefalse.prj"), refusal(tiff, false));
            }
        }
    }

    /** Spoiled by chance, from fixed seeds: a mask or a refusal, soon. */
    @ParameterizedTest
    @CsvSource({"tif, 60", "asc, 60", "prj, 40"})
    void spoiledRasters(String spoiled, int cases) throws IOException {
        byte[] tiff = new TinyTiff(20, 20, 9, 51, 0.1).wgs84().heights((x, y) -> 100 * Math.sin(50 * x)).bytes();
        byte[] grid = (HEAD + "10 20 10 20 10 20\n").getBytes();
        byte[] prj = WGS84.getBytes();
        int refused = 0;
        for (int seed = 0; seed < cases; seed++) {
            Random random = new Random(seed);
            Path file = folder.resolve(spoiled.equals("tif") ? "spoiled.tif" : "spoiled.asc");
            Files.write(file, spoiled.equals("tif") ? spoil(tiff, random) : spoiled.equals("asc") ? spoil(grid, random) : grid);
            Files.write(folder.resolve("spoiled.prj"), spoiled.equals("prj") ? spoil(prj, random) : prj);
            refused += assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
                try {
                    TerrainHorizon.compute(List.of(file), request(false), null);
                    return 0;
                } catch (TerrainException e) {
                    assertEquals(2, e.getMessage().lines().count(), e.getMessage());
                    return 1;
                }
            }, "seed " + seed);
        }
        assertTrue(refused > cases / 20 && refused < cases, "both outcomes occur: " + refused);
    }

    /** Flips a bit, cuts off, or says some of it twice. */
    private static byte[] spoil(byte[] good, Random random) {
        int at = random.nextInt(good.length);
        switch (random.nextInt(4)) {
            case 0 -> {
                return Arrays.copyOf(good, at);
            }
            case 1 -> {
                byte[] longer = Arrays.copyOf(good, good.length + good.length - at);
                System.arraycopy(good, at, longer, good.length, good.length - at);
                return longer;
            }
            default -> {
                // The directory of a GeoTIFF is at its end, the head of a grid at its beginning.
                byte[] bad = good.clone();
                int near = random.nextBoolean() ? random.nextInt(good.length) : good.length - 1 - random.nextInt(Math.min(400, good.length));
                bad[near] ^= (byte) (1 << random.nextInt(8));
                return bad;
            }
        }
    }

    /** What a library says of its own code is not handed on; what the disk says is. */
    @Test
    void wordsOfALibraryStayInside() {
        Exception library = new IOException("For input string: \"-\u007f-999\"", new NumberFormatException());
        assertFalse(RasterFormat.unreadable(Path.of("a.tif"), library).getMessage().contains("input string"));
        assertTrue(RasterFormat.unreadable(Path.of("a.tif"), new IOException("Input/output error")).getMessage()
                .contains("Input/output error"));
    }

    @Test
    void elsewhereOrVoidAtTheMark() throws IOException {
        Path far = new TinyTiff(20, 20, 19, 51, 0.1).wgs84().write(folder.resolve("far.tif"));
        assertTrue(refusal(far, false).contains("reaches within 20 km of the mark"));
        Path empty = new TinyTiff(20, 20, 9, 51, 0.1).wgs84().heights((x, y) -> -9999).write(folder.resolve("void.tif"));
        assertTrue(refusal(empty, false).contains("no height at the mark"));
    }

    @Test
    void noRastersAtAll() throws IOException {
        refused("empty", new byte[0]);
        refused("neither a GeoTIFF nor an ArcGrid", "latitude,longitude\n1,2\n".getBytes());
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);
        noise[0] = 1;
        refused("neither", noise);
        System.arraycopy(new byte[] {'I', 'I', 42, 0}, 0, noise, 0, 4);
        refused("cannot be read", noise);
        assertTrue(refusal(folder, false).contains("not a plain file"));
        assertTrue(refusal(folder.resolve("none.tif"), false).contains("no such file"));
        assertThrows(TerrainException.class, () -> TerrainHorizon.compute(List.of(), request(false), null));
    }

    @Test
    void aPicture() throws IOException {
        refused("3 bands", new TinyTiff(20, 20, 9, 51, 0.1).wgs84().bands(3).bytes());
    }

    @Test
    void aTruncatedGeoTiff() throws IOException {
        byte[] whole = new TinyTiff(50, 50, 8, 52, 0.1).wgs84().bytes();
        for (int length : new int[] {5, 8, 100, whole.length / 2, whole.length - 300, whole.length - 100}) {
            refused("cannot be read", Arrays.copyOf(whole, length));
        }
    }

    /** A header that promises more than any memory holds. */
    @Test
    void aHostileGeoTiff() throws IOException {
        byte[] bytes = new TinyTiff(50, 50, 8, 52, 0.1).wgs84().bytes();
        ByteBuffer tiff = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        int directory = tiff.getInt(4);
        for (int entry = 0; entry < tiff.getShort(directory); entry++) {
            int at = directory + 2 + 12 * entry;
            if (List.of(256, 257, 278).contains((int) tiff.getShort(at))) {
                tiff.putInt(at + 8, 2_000_000_000);
            }
        }
        String message = refusal(Files.write(folder.resolve("bad.tif"), bytes), false);
        assertTrue(message.contains("\n"), message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1 2 3 4 5            | should hold 6 heights, but has 5",
        "1 2 3 4 5 6 7        | should hold 6 heights, but has 7",
        "1 2 3 4,5 5 6        | line 6: \"4,5\" is not a number",
        "1 2 three 4 5 6      | line 6: \"three\" is not a number",
    })
    void anArcGridWithWrongNumbers(String numbers, String expected) throws IOException {
        refused(expected, (HEAD + numbers + "\n").getBytes());
    }

    @Test
    void anArcGridWithAWrongHead() throws IOException {
        refused("no cellsize", "ncols 3\nnrows 2\nxllcorner 9\nyllcorner 49\n1 2 3 4 5 6\n".getBytes());
        refused("cannot be", HEAD.replace("ncols 3", "ncols -3").getBytes());
        refused("million cells", HEAD.replace("ncols 3", "ncols 2000000000").getBytes());
        refused("\"nrows\" is not a number", "ncols nrows 2\n".getBytes());
    }

    @Test
    void cellsWithoutSize() throws IOException {
        Files.writeString(folder.resolve("cells.prj"), WGS84);
        for (String size : List.of("1e300", "1e-300")) {
            Path file = Files.writeString(folder.resolve("cells.asc"), HEAD.replace("cellsize 1", "cellsize " + size) + "1 2 3 4 5 6\n");
            assertTrue(refusal(file, false).contains("which no raster has"), refusal(file, false));
        }
    }

    /** A hundred megabytes of one word are refused at its beginning. */
    @Test
    void aHugeFile() throws IOException {
        Path huge = folder.resolve("huge.asc");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.write((HEAD + "1 2 3").getBytes());
            file.setLength(100 << 20);
        }
        assertTrue(refusal(huge, false).contains("but has 3"));
        Files.delete(huge);
    }
}
