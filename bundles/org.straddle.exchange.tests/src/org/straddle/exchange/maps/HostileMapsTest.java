package org.straddle.exchange.maps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Random;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;

/** Maps that cannot be taken: a clear word, in reasonable time and memory. */
class HostileMapsTest {

    private static final String[] GOOD = {MapReaderTest.PUBLISHED_GPX, MapReaderTest.RFC_COLLECTION};

    @TempDir
    Path temp;

    private static ReadException refused(byte[] bytes) {
        return assertThrows(ReadException.class, () -> assertTimeoutPreemptively(Duration.ofSeconds(60),
                () -> MapReader.read(new SourceFile("map", bytes), CoordinateOrder.OF_THE_FORMAT, null)));
    }

    private static ReadException refused(String text) {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void cutOffAnywhere(int format) {
        String good = GOOD[format].stripTrailing();
        for (int length = 0; length < good.length(); length += 7) {
            ReadException e = refused(good.substring(0, length));
            assertTrue(e.line() > 0 || e.what().contains("empty"), e.getMessage());
            assertTrue(format == 0 || length == 0 || e.what().contains("breaks off") || e.what().contains("well-formed"), e.what());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void noise(int format) {
        byte[] noise = new byte[1 << 20];
        new Random(format).nextBytes(noise);
        refused(noise);
        byte[] start = GOOD[format].getBytes(StandardCharsets.UTF_8);
        System.arraycopy(start, 0, noise, 0, start.length);
        refused(noise);
        // Within the text.
        System.arraycopy(start, 0, noise, 0, start.length / 2);
        new Random(format).nextBytes(start);
        System.arraycopy(start, 0, noise, start.length / 2, start.length / 2);
        refused(noise);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1})
    void otherEncodings(int format) throws ReadException {
        assertTrue(refused(GOOD[format].getBytes(StandardCharsets.UTF_16)).what().contains("UTF-16"));
        refused(GOOD[format].replaceFirst("5066|value0", "é").getBytes(StandardCharsets.ISO_8859_1));
        // The mark before UTF-8 is harmless.
        assertTrue(MapReaderTest.read("\uFEFF" + GOOD[format]).features().size() > 1);
    }

    @Test
    void emptyAndBlank() {
        assertTrue(refused("").what().contains("empty"));
        assertTrue(refused(" \n\t").what().contains("empty"));
        refused(" ".repeat(1 << 20));
        refused("\uFEFF");
        assertTrue(refused("<gpx/>").what().contains("no points, lines or areas"));
    }

    @Test
    void entitiesAreRefused() {
        assertEquals(1, refused("<!DOCTYPE gpx SYSTEM \"http://localhost:1/x.dtd\"><gpx/>").line());
        for (String gpx : EntityAttack.GPX) {
            assertTrue(refused(gpx).what().contains("DOCTYPE"), gpx);
        }
    }

    @Test
    void deepNesting() {
        refused("<gpx>" + "<a>".repeat(1_000_000));
        refused("{\"a\":".repeat(1_000_000));
        refused("{\"type\":\"Point\",\"coordinates\":" + "[".repeat(1_000_000));
        refused("{\"type\":\"GeometryCollection\",\"geometries\":[".repeat(100_000));
        refused("<gpx" + " a".repeat(1_000_000));
    }

    @Test
    void longTextsAreNotKept() throws ReadException {
        String name = "x".repeat(8 << 20);
        assertTrue(MapReaderTest.read("<gpx><wpt lat='1' lon='2'><name>" + name + "</name></wpt></gpx>").features().get(0).name()
                .length() <= 200);
        MapReaderTest.read("{\"type\":\"Point\",\"coordinates\":[1,2],\"note\":\"" + name + "\"}");
        refused("{\"type\":\"Feature\",\"properties\":{\"name\":\"" + name + "\"},\"geometry\":null}");
        refused("{\"type\":\"Point\",\"coordinates\":[" + "1".repeat(8 << 20) + ",2]}");
    }

    /** Small in the file, large in memory. */
    @Test
    void whatWouldSwellIsRefused() {
        assertTrue(refused("{\"type\":\"GeometryCollection\",\"geometries\":[" + "{},".repeat(2_600_000) + "{}]}").what()
                .contains("too much"));
        assertTrue(refused("{\"type\":\"MultiLineString\",\"coordinates\":[" + "[],".repeat(2_600_000) + "[]]}").what()
                .contains("too much"));
        // Each edge spans half the Earth; straight in degrees it has 20 000 pieces.
        assertTrue(refused("{\"type\":\"LineString\",\"coordinates\":[[0,0],[179,1]" + ",[0,0],[179,1]".repeat(1000) + "]}").what()
                .contains("too much"));
    }

    /** @return how often the part was written */
    private static int hundredMegabytes(Path file, String start, String part, String end) throws IOException {
        int times = (100 << 20) / part.length() + 1;
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(start);
            for (int i = 0; i < times; i++) {
                out.write(part);
            }
            out.write(end);
        }
        return times;
    }

    @Test
    void aHundredMegabytesOfTracks() throws IOException {
        Path file = temp.resolve("large.gpx");
        StringBuilder segment = new StringBuilder("<trkseg>\n");
        for (int i = 0; i < 1000; i++) {
            segment.append("<trkpt lat=\"").append(40 + i % 500 * 0.0001).append("\" lon=\"-10.5\"><time>2031-06-21T12:00:00Z</time></trkpt>\n");
        }
        int segments = hundredMegabytes(file, "<gpx version=\"1.1\" creator=\"demo\"><trk><name>long</name>",
                segment.append("</trkseg>\n").toString(), "</trk></gpx>");
        MapFile map = assertTimeoutPreemptively(Duration.ofSeconds(120), () -> MapReader.read(file));
        assertEquals(segments, map.features().get(0).parts().size());
        assertEquals(segments * 1000, map.features().get(0).size());
    }

    @Test
    void aHundredMegabytesOfRoadsCutOff() throws IOException {
        Path file = temp.resolve("large.geojson");
        StringBuilder feature = new StringBuilder("{\"type\":\"Feature\",\"properties\":{\"name\":\"R\",\"highway\":\"track\"},"
                + "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[10.5,50]");
        for (int i = 1; i < 500; i++) {
            feature.append(",[10.5").append(i).append(",50.0").append(i).append(']');
        }
        int features = hundredMegabytes(file, "{\"type\":\"FeatureCollection\",\"features\":[",
                feature.append("]}},\n").toString(), "");
        ReadException e = assertThrows(ReadException.class,
                () -> assertTimeoutPreemptively(Duration.ofSeconds(120), () -> MapReader.read(file)));
        assertTrue(e.line() > features - 1, e.getMessage());
        NullProgressMonitor monitor = new NullProgressMonitor();
        monitor.setCanceled(true);
        assertThrows(OperationCanceledException.class, () -> MapReader.read(file, CoordinateOrder.OF_THE_FORMAT, monitor));
    }

    @Test
    void notAPlainFile() throws IOException {
        assertTrue(assertThrows(ReadException.class, () -> MapReader.read(temp)).what().contains("not a plain file"));
        assertTrue(assertThrows(ReadException.class, () -> MapReader.read(temp.resolve("x"))).what().contains("no such file"));
        Path huge = temp.resolve("huge");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength((1L << 30) + 1);
        }
        assertTrue(assertThrows(ReadException.class, () -> MapReader.read(huge)).what().contains("larger than 1024 MB"));
    }
}
